package batchwright.needs.bodyfat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.bodyfat.FatPlausibility.Verdict;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.PalNumber;
import batchwright.person.Sex;
import batchwright.quantity.Share;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FatPlausibilityTest {
    /**
     * fat % = 100 (1 - FFMI / BMI), so a bound of FFMI is one of fat. By hand from the bounds, 33 or 28.5 + 0.25 (BMI - 30) and 28.3 or 23.9 + the
     * same: at BMI 40 of a man 35.5 and 30.8, so 11.25 % and 23 %. At 90 years Deurenberg is far above the lean bounds, so the age is 20.
     */
    @ParameterizedTest
    @CsvSource({
        "MALE, 40, 11.2, IMPOSSIBLE",
        "MALE, 40, 11.3, DOUBTFUL",
        "MALE, 40, 22.9, DOUBTFUL",
        "MALE, 40, 29.9, PLAUSIBLE",
        "MALE, 18.5, 27.1, DOUBTFUL",
        "MALE, 18.5, 40.6, IMPOSSIBLE",
        "MALE, 25, 2.9, IMPOSSIBLE",
        "FEMALE, 40, 22.4, IMPOSSIBLE",
        "FEMALE, 40, 22.6, DOUBTFUL",
        "FEMALE, 40, 34.1, PLAUSIBLE",
        "FEMALE, 22, 7.9, IMPOSSIBLE",
        "FEMALE, 22, 50.1, DOUBTFUL",
        "FEMALE, 22, 56.9, IMPOSSIBLE"
    })
    void judges_by_fat_free_mass_index(Sex sex, double bmi, double percent, Verdict verdict) {
        assertThat(verdict(sex, bmi, 20, percent, FatMethod.NOT_SAID)).isEqualTo(verdict);
    }

    /**
     * International Journal of Exercise Science 11(6):17: college athletes 22.8 (SD 2.8), n 209; PubMed 31238804: women 18.8 (2.1), n 372. Two
     * standard deviations above and below are no reason for doubt in a lean athlete of that index.
     */
    @ParameterizedTest
    @CsvSource({"MALE, 22.8, 2.8, 12", "FEMALE, 18.8, 2.1, 22"})
    void believes_athletes(Sex sex, double mean, double sd, double percent) {
        for (double index = mean - 2 * sd; index < mean + 1.9 * sd; index += 0.1) {
            double bmi = index / (1 - percent / 100);
            assertThat(verdict(sex, bmi, 20, percent, FatMethod.DXA))
                    .as("FFMI " + index)
                    .isEqualTo(Verdict.PLAUSIBLE);
        }
    }

    /** PMC5438288: 26 % of footballers lie above 25 and the largest is 31.7: 25 is no limit, and the largest is not refused. */
    @Test
    void takes_the_largest_index_seen() {
        assertThat(verdict(Sex.MALE, 27 / 0.85, 20, 15, FatMethod.DXA)).isEqualTo(Verdict.PLAUSIBLE);
        assertThat(verdict(Sex.MALE, 31.7 / 0.85, 20, 15, FatMethod.DXA)).isEqualTo(Verdict.DOUBTFUL);
    }

    /** 2.5 x hypot(4.5, 4.5) = 15.9 points on a scale, 2.5 x hypot(4, 4.5) = 15.05 by tape. Deurenberg at BMI 27, 40 y: male 25.4 %. */
    @ParameterizedTest
    @CsvSource({
        "SCALE, 9.6, PLAUSIBLE",
        "SCALE, 9.4, DOUBTFUL",
        "TAPE, 10.4, PLAUSIBLE",
        "TAPE, 10.3, DOUBTFUL",
        "DXA, 5, PLAUSIBLE"
    })
    void doubts_what_lies_far_from_the_estimate(FatMethod method, double percent, Verdict verdict) {
        assertThat(verdict(Sex.MALE, 27, 40, percent, method)).isEqualTo(verdict);
    }

    /** An index of 35.2: before, 4532 kcal were planned without a word, where weight and height say 3488 or so. */
    @Test
    void body_fat_5_percent_at_120_kg_and_180_cm_is_asked_back() {
        Needs needs = needs(5, FatMethod.NOT_SAID);
        assertThat(needs.cautions())
                .filteredOn(Caution::stopsPlanning)
                .extracting(Caution::code)
                .containsExactly("body_fat_impossible");
        assertThat(needs.restingInUse().equation()).isEqualTo("Mifflin-St Jeor 1990");
        assertThat(needs.target()).isEmpty();
    }

    /** At 16 % the index is 31.1: planned from Mifflin, 10 W + 6.25 H - 5 A + 5 = 2130, with half the way to Cunningham, 2547, in its error. */
    @Test
    void a_doubtful_figure_picks_the_other_equation_and_widens_the_range() {
        Needs needs = needs(16, FatMethod.SCALE);
        assertThat(needs.cautions()).extracting(Caution::code).contains("body_fat_doubtful");
        assertThat(needs.target()).isPresent();
        assertThat(needs.restingInUse().perDay().kcal()).isCloseTo(2130, within(1e-9));
        double cunningham = 370 + 21.6 * 120 * 0.84;
        assertThat(needs.restingInUse().errorKcal()).isCloseTo(Math.hypot(213, (cunningham - 2130) / 2), within(0.01));
        Needs silent = TestEater.of(TestEater.body(Sex.MALE, 120, 180, 40))
                .activity(new PalNumber(1.6))
                .needs();
        assertThat(width(needs)).isGreaterThan(width(silent) * 1.1);
    }

    /** What is measured better is never less sure, and a guess chooses no equation. */
    @Test
    void a_scale_is_no_surer_than_a_tape() {
        assertThat(FatMethod.SCALE.errorPoints()).isGreaterThan(FatMethod.TAPE.errorPoints());
        assertThat(FatMethod.TAPE.errorPoints()).isGreaterThan(FatMethod.DXA.errorPoints());
        assertThat(FatMethod.NOT_SAID.errorPoints()).isEqualTo(FatMethod.SCALE.errorPoints());
        assertThat(width(needs(30, FatMethod.SCALE))).isGreaterThan(width(needs(30, FatMethod.TAPE)));
        assertThat(needs(30, FatMethod.GUESS).restingInUse().equation()).isEqualTo("Mifflin-St Jeor 1990");
    }

    /** BIA limits of agreement 15-20 points wide (PMC12922097): width / 3.92 is 3.8 to 5.1; the others as FatMethod cites them. */
    @ParameterizedTest
    @EnumSource(FatMethod.class)
    void each_error_lies_within_what_is_published_or_says_that_nothing_is(FatMethod method) {
        double points = method.errorPoints();
        switch (method) {
            case SCALE, NOT_SAID -> assertThat(points).isBetween(15 / 3.92, 20 / 3.92);
            case CALLIPERS, TAPE -> assertThat(points).isBetween(3.5, 4.5);
            case DXA, AIR -> assertThat(points).isBetween(1.6, 3.6);
            case GUESS -> assertThat(method.source()).contains("no published error");
        }
    }

    private static double width(Needs needs) {
        return needs.totalRange().most().kcal() - needs.totalRange().least().kcal();
    }

    private static Needs needs(double percent, FatMethod method) {
        Body body = TestEater.body(Sex.MALE, 120, 180, 40).withFat(told(percent, method));
        return TestEater.of(body).activity(new PalNumber(1.6)).needs();
    }

    private static Verdict verdict(Sex sex, double bmi, double years, double percent, FatMethod method) {
        Body body = TestEater.body(sex, bmi * 1.75 * 1.75, 175, years);
        return FatPlausibility.of(body, told(percent, method)).verdict();
    }

    private static BodyFat.Measured told(double percent, FatMethod method) {
        return new BodyFat.Measured(Share.ofPercent(percent), method);
    }
}
