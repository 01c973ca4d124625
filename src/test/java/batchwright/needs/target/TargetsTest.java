package batchwright.needs.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Targets worked out on paper. */
class TargetsTest {
    /**
     * Man, 80 kg, 180 cm, 30 years: Mifflin 1780 kcal. At PAL 1.76 the total is 3132.8; 0.25 % a week is 0.2 kg, 220 kcal a day.
     * Aim 3352.8 = 3353. Band 3 %: 3252.41 to 3453.59. Protein 1.4 x 80 = 112. Fat 20 % / 9 = 74.51, 35 % / 9 = 130.39.
     * Fibre 38. Container 15 % = 502.95, 45 % = 1508.85, protein 0.25 x 80 = 20.
     */
    @Test
    void a_man_who_gains() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .pal(1.76)
                .lifts(3)
                .kcalADay(220)
                .needs();
        assertThat(needs.total().kcal()).isCloseTo(3132.8, within(1e-9));
        assertThat(needs.goalKcal()).isCloseTo(220, within(1e-9));
        assertThat(needs.target()).hasValueSatisfying(day -> {
            assertThat(day.energyAimKcal()).isEqualTo(3353);
            assertThat(day.limits())
                    .extracting(limit -> limit.id() + ": " + limit.range().says(limit.unit()))
                    .containsExactly(
                            "energy: 3253 to 3453 kcal",
                            "mean_energy: at least 3353 kcal",
                            "protein: at least 112 g",
                            "fat: 75 to 130 g",
                            "carbohydrate: at least 130 g",
                            "fibre: at least 38 g",
                            "fruit_veg: at least 400 g",
                            "container_energy: 503 to 1508 kcal",
                            "container_protein: at least 20 g",
                            "container_cooked_weight: at most 900 g",
                            "container_volume: at most 1050 ml");
        });
    }

    /**
     * Woman, 70 kg, 165 cm, 35 years, 30 % fat: FFM 49 kg, Cunningham 1991 370 + 21.6 x 49 = 1428.4. At PAL 1.6 the total is
     * 2285.44; 0.3 kg a week is 330 kcal a day. Aim 1955.44 = 1955; band 1896.35 to 2013.65. The weight counts as 68.7 kg, 0.43 % a week as 1.571 g: 108. Fat 43.44 to
     * 76.03. Fibre 25. Container 293.25 to 879.75, protein 17.2.
     */
    @Test
    void a_woman_who_loses_and_knows_her_body_fat() {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 70, 165, 35, 30.0))
                .pal(1.6)
                .lifts(3)
                .kcalADay(-330)
                .needs();
        assertThat(needs.target()).hasValueSatisfying(day -> {
            assertThat(day.energyAimKcal()).isEqualTo(1955);
            assertThat(day.limits())
                    .extracting(limit -> limit.id() + ": " + limit.range().says(limit.unit()))
                    .containsExactly(
                            "energy: 1897 to 2013 kcal",
                            "mean_energy: at most 1955 kcal",
                            "protein: at least 110 g",
                            "fat: 44 to 76 g",
                            "carbohydrate: at least 130 g",
                            "fibre: at least 25 g",
                            "fruit_veg: at least 400 g",
                            "container_energy: 294 to 879 kcal",
                            "container_protein: at least 18 g",
                            "container_cooked_weight: at most 900 g",
                            "container_volume: at most 1050 ml");
        });
    }

    /** 70 kg, training with weights: gain and hold 1.4 g/kg (ISSN 2017), losing half of 0.5 % a week 1.5; rounded up. */
    @ParameterizedTest
    @CsvSource({"0.25, 98", "0, 98", "-0.25, 105"})
    void protein_follows_the_goal(double percentAWeek, int grams) {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 70, 170, 30))
                .lifts(3)
                .percentAWeek(percentAWeek)
                .needs();
        assertThat(needs.target().orElseThrow().day(Nutrient.PROTEIN).least()).isEqualTo(grams);
    }

    /** Mifflin 1780 x 1.53 = 2723.4, aim 2723; 5 %: 2586.85 to 2859.15. Protein 1.8 x 80 = 144. */
    @Test
    void the_profile_replaces_defaults() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .adjusted(5, 1.8, 38, 500)
                .needs();
        DayTarget day = needs.target().orElseThrow();
        assertThat(day.day(Nutrient.ENERGY).least()).isEqualTo(2587);
        assertThat(day.day(Nutrient.ENERGY).most().orElseThrow()).isEqualTo(2859);
        assertThat(day.day(Nutrient.PROTEIN).least()).isEqualTo(144);
        assertThat(day.day(Nutrient.FIBRE).least()).isEqualTo(38);
        assertThat(day.day(Nutrient.FRUIT_VEG).least()).isEqualTo(500);
        assertThat(needs.lines())
                .filteredOn(line -> line.source().text().equals("the eater's profile"))
                .extracting(TargetLine::name)
                .containsExactly("energy", "protein", "fibre", "fruit and vegetables");
    }

    /** Mifflin 1780 x 1.53 = 2723.4, aim 2723; 1 % is 2695.77 to 2750.23, and 2 % of the profile 2668.54 to 2777.46. */
    @Test
    void who_holds_the_weight_comes_near_to_the_aim_on_average() {
        TestEater holding = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30));

        assertThat(onAverage(holding)).isEqualTo(Range.between(2696, 2750));
        assertThat(onAverage(holding.onAverage(2))).isEqualTo(Range.between(2669, 2777));
    }

    private static Range onAverage(TestEater eater) {
        return eater.needs().target().orElseThrow().range(Scope.MEAN_OF_DAYS, Nutrient.ENERGY);
    }

    /** Floating point must not turn 1.1 x 70 = 77.00000000000001 g into 78. */
    @Test
    void rounding_up_is_not_tipped_over_by_noise() {
        Needs needs =
                TestEater.of(TestEater.body(Sex.MALE, 70, 180, 30)).protein(1.1).needs();
        assertThat(needs.target().orElseThrow().day(Nutrient.PROTEIN).least()).isEqualTo(77);
    }

    @Test
    void every_line_says_where_it_comes_from() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30)).needs();
        assertThat(needs.lines()).hasSize(11).allSatisfy(line -> {
            assertThat(line.says()).isNotBlank();
            assertThat(line.source().text()).isNotBlank();
        });
        assertThat(needs.lines().get(2).says())
                .isEqualTo(
                        "at least 67 g: 0.83 g per kg; more helps up to 129 g for people who train with weights (the profile does"
                                + " not say)");
    }
}
