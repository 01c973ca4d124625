package batchwright.needs.target;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.needs.TestEater;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Guides worked out on paper. */
class GuidesTest {
    /**
     * The man who gains in {@link TargetsTest}: aim 3353 kcal, protein floor 112 g, fat 75 to 130 g. Carbohydrate: (3353 - 448 - 1170) / 4 =
     * 433.75 and (3353 - 448 - 675) / 4 = 557.5. 10 % of energy: 335.3 / 9 = 37.26 g of fat, 335.3 / 4 = 83.83 g of sugar. 45-65 % of
     * energy: 377.21 and 544.86 g. Iraki 2019: 3-5 g x 80 kg.
     */
    @Test
    void a_man_who_gains() {
        Guides guides = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .pal(1.76)
                .lifts(3)
                .kcalADay(220)
                .needs()
                .guides()
                .orElseThrow();

        assertThat(guides.carbohydrateLeastG()).isEqualTo(434);
        assertThat(guides.carbohydrateMostG()).isEqualTo(557);
        assertThat(guides.saturatedFatMostG()).isEqualTo(37);
        assertThat(guides.freeSugarMostG()).isEqualTo(83);
        assertThat(guides.lines())
                .extracting(TargetLine::name)
                .containsExactly("carbohydrate", "carbohydrate, lifters who gain", "saturated fat", "sodium", "sugar");
        assertThat(guides.lines().get(0).says()).startsWith("434 to 557 g").endsWith("378 to 544 g");
        assertThat(guides.lines().get(1).says()).isEqualTo("at least 3-5 g per kg: 240 to 400 g");
    }

    /** Nutrients 2021;13:3255: 2-5 g per kg while losing; 140 to 350 g at 70 kg. */
    @Test
    void a_lifter_who_loses_has_another_range() {
        Guides guides = TestEater.of(TestEater.body(Sex.FEMALE, 70, 165, 35, 30.0))
                .pal(1.6)
                .percentAWeek(-0.4)
                .needs()
                .guides()
                .orElseThrow();

        assertThat(guides.lines())
                .filteredOn(line -> line.name().startsWith("carbohydrate, lifters"))
                .singleElement()
                .satisfies(line -> assertThat(line.says()).isEqualTo("2-5 g per kg: 140 to 350 g"));
    }

    /** 4 x protein floor + 9 x fat + 4 x carbohydrate is the aim at both ends, to the g that rounding takes: 4 kcal. */
    @ParameterizedTest
    @CsvSource({
        "MALE, 80, 180, 30, 0.25",
        "FEMALE, 58, 165, 61, 0",
        "MALE, 110, 185, 45, -0.5",
        "FEMALE, 70, 170, 19, 0.1"
    })
    void the_three_add_up_to_the_aim(Sex sex, double kg, double cm, double years, double percentAWeek) {
        var needs = TestEater.of(TestEater.body(sex, kg, cm, years))
                .pal(1.7)
                .percentAWeek(percentAWeek)
                .needs();
        DayTarget day = needs.target().orElseThrow();
        Guides guides = needs.guides().orElseThrow();
        int protein = 4 * day.day(Nutrient.PROTEIN).least();

        assertThat(protein + 9 * day.day(Nutrient.FAT).most().orElseThrow() + 4 * guides.carbohydrateLeastG())
                .isBetween(day.energyAimKcal(), day.energyAimKcal() + 4);
        assertThat(protein + 9 * day.day(Nutrient.FAT).least() + 4 * guides.carbohydrateMostG())
                .isBetween(day.energyAimKcal() - 4, day.energyAimKcal());
    }

    /** 5 g of protein per kg of 120 kg are 2400 kcal, more than the aim leaves beside the fat: nothing remains, not less. */
    @Test
    void there_is_never_less_carbohydrate_than_none() {
        Guides guides = TestEater.of(TestEater.body(Sex.FEMALE, 120, 160, 60))
                .pal(1.4)
                .protein(5)
                .needs()
                .guides()
                .orElseThrow();

        assertThat(guides.carbohydrateLeastG()).isZero();
        assertThat(guides.carbohydrateMostG()).isNotNegative();
    }

    @ParameterizedTest
    @ValueSource(doubles = {64.9, 65})
    void older_adults_are_told_what_is_advised_for_them(double years) {
        Guides guides = TestEater.of(TestEater.body(Sex.MALE, 80, 180, years))
                .needs()
                .guides()
                .orElseThrow();

        assertThat(guides.lines().stream().anyMatch(line -> line.name().equals("protein from 65 years on")))
                .isEqualTo(years >= 65);
    }
}
