package batchwright.needs.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.DayTarget;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Targets worked out on paper. */
class TargetsTest {
    /**
     * Man, 80 kg, 180 cm, 30 years: Mifflin 1780 kcal. At PAL 1.76 the total is 3132.8; 0.25 % a week is 0.2 kg, 220 kcal a day.
     * Aim 3352.8 = 3353. Band 3 %: 3252.41 to 3453.59. Protein 1.62 x 80 = 129.6. Fat 20 % / 9 = 74.51, 35 % / 9 = 130.39.
     * Fibre 14 x 3.353 = 46.94. Container 15 % = 502.95, 45 % = 1508.85, protein 0.25 x 80 = 20.
     */
    @Test
    void a_man_who_gains() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .pal(1.76)
                .kcalADay(220)
                .needs();
        assertThat(needs.total().kcal()).isCloseTo(3132.8, within(1e-9));
        assertThat(needs.goalKcal()).isCloseTo(220, within(1e-9));
        assertThat(needs.target()).contains(new DayTarget(3353, 3253, 3453, 130, 75, 130, 47, 400, 503, 1508, 20));
    }

    /**
     * Woman, 70 kg, 165 cm, 35 years, 30 % fat: FFM 49 kg, Cunningham 1991 370 + 21.6 x 49 = 1428.4. At PAL 1.6 the total is
     * 2285.44; 330 kcal a day less. Aim 1955.44 = 1955; band 1896.35 to 2013.65. Protein 2.3 x 49 = 112.7. Fat 43.44 to
     * 76.03. Fibre 27.37. Container 293.25 to 879.75, protein 17.5.
     */
    @Test
    void a_woman_who_loses_and_knows_her_body_fat() {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 70, 165, 35, 30.0))
                .pal(1.6)
                .kcalADay(-330)
                .needs();
        assertThat(needs.target()).contains(new DayTarget(1955, 1897, 2013, 113, 44, 76, 28, 400, 294, 879, 18));
    }

    /** 70 kg: gain 1.62 g/kg (Morton 2018), hold 1.4, lose 2.0 (both ends of ISSN 2017); rounded up. */
    @ParameterizedTest
    @CsvSource({"0.25, 114", "0, 98", "-0.25, 140"})
    void protein_follows_the_goal(double percentAWeek, int grams) {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 70, 170, 30))
                .percentAWeek(percentAWeek)
                .needs();
        assertThat(needs.target().orElseThrow().proteinLeastG()).isEqualTo(grams);
    }

    /** At 160 cm, BMI 30 is 76.8 kg and BMI 25 is 64 kg. Hold: 1.4 x 76.7 = 107.38, but from 76.8 on 1.4 x 64 = 89.6. */
    @ParameterizedTest
    @CsvSource({"76.7, 108, 20", "76.9, 90, 16", "110, 90, 16"})
    void protein_counts_the_weight_at_bmi_25_from_bmi_30_on(double kg, int aDay, int inAContainer) {
        DayTarget day = TestEater.of(TestEater.body(Sex.FEMALE, kg, 160, 30))
                .needs()
                .target()
                .orElseThrow();
        assertThat(day.proteinLeastG()).isEqualTo(aDay);
        assertThat(day.containerProteinLeastG()).isEqualTo(inAContainer);
    }

    /** Mifflin 1780 x 1.53 = 2723.4, aim 2723; 5 %: 2586.85 to 2859.15. Protein 1.8 x 80 = 144. */
    @Test
    void the_profile_replaces_defaults() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30))
                .adjusted(5, 1.8, 38, 500)
                .needs();
        DayTarget day = needs.target().orElseThrow();
        assertThat(day.energyLeastKcal()).isEqualTo(2587);
        assertThat(day.energyMostKcal()).isEqualTo(2859);
        assertThat(day.proteinLeastG()).isEqualTo(144);
        assertThat(day.fibreLeastG()).isEqualTo(38);
        assertThat(day.fruitVegLeastG()).isEqualTo(500);
        assertThat(needs.lines())
                .filteredOn(line -> line.source().text().equals("the eater's profile"))
                .extracting(TargetLine::name)
                .containsExactly("energy", "protein", "fibre", "fruit and vegetables");
    }

    /** Floating point must not turn 1.1 x 70 = 77.00000000000001 g into 78. */
    @Test
    void rounding_up_is_not_tipped_over_by_noise() {
        Needs needs =
                TestEater.of(TestEater.body(Sex.MALE, 70, 180, 30)).protein(1.1).needs();
        assertThat(needs.target().orElseThrow().proteinLeastG()).isEqualTo(77);
    }

    @Test
    void every_line_says_where_it_comes_from() {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30)).needs();
        assertThat(needs.lines()).hasSize(7).allSatisfy(line -> {
            assertThat(line.says()).isNotBlank();
            assertThat(line.source().text()).isNotBlank();
        });
        assertThat(needs.lines().get(1).says())
                .isEqualTo("at least 112 g: 1.4 g per kg; published range 1.4-2 g per kg: 112-160 g");
    }

    /**
     * The published ranges beside the floors: Morton 2018, 95 % CI 1.03-2.20 g/kg; ISSN 2017, 1.4-2.0 g/kg; Helms 2014, 2.3-3.1 g per kg of
     * fat-free mass. At 80 kg, with 64 kg fat-free.
     */
    @ParameterizedTest
    @CsvSource({
        "0.25, 20, 1.03-2.2 g per kg: 83-176 g",
        "-0.25, , 1.4-2 g per kg: 112-160 g",
        "-0.25, 20, 2.3-3.1 g per kg: 148-198 g"
    })
    void the_published_range_stands_beside_the_protein_floor(double percentAWeek, Double fatPercent, String range) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30, fatPercent))
                .pal(1.76)
                .percentAWeek(percentAWeek)
                .needs();
        assertThat(needs.lines().get(1).says()).endsWith(range);
    }
}
