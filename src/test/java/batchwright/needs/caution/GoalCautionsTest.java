package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static batchwright.needs.caution.HealthCautionsTest.find;
import static batchwright.person.Health.Answer.NO;
import static batchwright.person.Health.Answer.YES;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Goal;
import batchwright.person.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each caution on both sides of its edge. */
class GoalCautionsTest {
    /** Man, 80 kg, 180 cm, 30 years: Mifflin 1780 kcal, BMI 24.7. */
    private static final TestEater MAN = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30));

    /** At 200 cm, BMI 18.5 is 74 kg. Losing 0.5 % a week for 12 weeks leaves 94 %: 74 / 0.94 = 78.72 kg is the edge. */
    @ParameterizedTest
    @CsvSource({"73.9, true", "78.7, true", "78.8, false"})
    void stops_a_loss_that_leads_below_bmi_18_5(double kg, boolean stops) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, kg, 200, 30))
                .percentAWeek(-0.5)
                .needs();
        assertStop(needs, "goal_below_bmi_18_5", stops);
    }

    /** PAL 2.4: a quarter of the total is 1068 kcal, so that 1 % a week, 880 kcal a day, is the edge. */
    @ParameterizedTest
    @CsvSource({"-1.0, false", "-1.01, true"})
    void stops_a_loss_of_more_than_one_per_cent_a_week(double percent, boolean stops) {
        assertStop(MAN.pal(2.4).percentAWeek(percent).needs(), "loss_too_fast", stops);
    }

    /** PAL 2.0 makes 3560 kcal; a quarter is 890. 1 % of 80 kg is 880 kcal. At PAL 1.6 the total is 2848 and a quarter 712. */
    @ParameterizedTest
    @CsvSource({"1.6, -712, false", "1.6, -713, true", "2.0, -880, false", "2.0, -881, true"})
    void stops_a_deficit_of_more_than_a_quarter(double pal, double kcal, boolean stops) {
        assertStop(MAN.pal(pal).kcalADay(kcal).needs(), "loss_too_fast", stops);
    }

    /** Man, 120 kg, 190 cm, 30 years: Mifflin 1200 + 1187.5 - 150 + 5 = 2242.5; x 2 = 4485; a quarter 1121; 1 % a week 1320 kcal. */
    @ParameterizedTest
    @CsvSource({"-1000, false", "-1001, true"})
    void stops_a_deficit_of_more_than_1000_kcal(double kcal, boolean stops) {
        TestEater big = TestEater.of(TestEater.body(Sex.MALE, 120, 190, 30));
        assertStop(big.pal(2.0).kcalADay(kcal).needs(), "loss_too_fast", stops);
    }

    /** At PAL 1.6: most 712 kcal a day, 712 x 7 / 7700 = 0.647 kg a week, rounded down. */
    @Test
    void says_how_fast_would_do() {
        Needs needs = MAN.pal(1.6).kcalADay(-900).needs();
        assertThat(find(needs, "loss_too_fast").orElseThrow().text())
                .contains("900 kcal a day less")
                .contains("is 712 kcal, about 0.64 kg a week");
    }

    /**
     * Woman, 50 kg, 155 cm, 50 years: Mifflin 500 + 968.75 - 250 - 161 = 1057.75; at PAL 1.4 1480.85. Losing 281 kcal a day, 0.51 % a
     * week, leaves 1199.85 = 1200; 282 leaves 1199. BMI 20.8, after twelve weeks 19.5.
     */
    @ParameterizedTest
    @CsvSource({"-281, false", "-282, true"})
    void stops_under_1200_kcal_for_women(double kcal, boolean stops) {
        TestEater woman = TestEater.of(TestEater.body(Sex.FEMALE, 50, 155, 50));
        assertStop(woman.pal(1.4).kcalADay(kcal).needs(), "intake_below_floor", stops);
    }

    /** Man, 60 kg, 165 cm, 60 years: Mifflin 600 + 1031.25 - 300 + 5 = 1336.25; at PAL 1.4 1870.75. 371 leaves 1499.75 = 1500. */
    @ParameterizedTest
    @CsvSource({"-371, false", "-372, true"})
    void stops_under_1500_kcal_for_men(double kcal, boolean stops) {
        TestEater man = TestEater.of(TestEater.body(Sex.MALE, 60, 165, 60));
        assertStop(man.pal(1.4).kcalADay(kcal).needs(), "intake_below_floor", stops);
    }

    @Test
    void stops_a_loss_with_medicine_for_diabetes() {
        assertStop(MAN.percentAWeek(-0.25).health(NO, NO, NO, YES).needs(), "diabetes_medicine", true);
        assertStop(MAN.percentAWeek(-0.25).health(NO, NO, NO, NO).needs(), "diabetes_medicine", false);
        assertStop(MAN.health(NO, NO, NO, YES).needs(), "diabetes_medicine", false);
    }

    @ParameterizedTest
    @CsvSource({"0.5, false", "0.501, true"})
    void warns_of_a_gain_faster_than_half_a_per_cent(double percent, boolean warns) {
        Needs needs = MAN.percentAWeek(percent).needs();
        assertThat(find(needs, "gain_fast").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** At 200 cm, BMI 18.5 is 74 kg. */
    @ParameterizedTest
    @CsvSource({"73.9, true", "74, false"})
    void sends_the_underweight_to_a_doctor_without_stopping(double kg, boolean warns) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, kg, 200, 30))
                .percentAWeek(0.25)
                .needs();
        assertThat(find(needs, "underweight").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /**
     * Man, 80 kg, 20 % fat: FFM 64 kg, Cunningham 1752.4, at PAL 1.4 2453.36. Losing 533 leaves 1920 = 30.0 kcal/kg, 534 leaves 1919.
     * At PAL 1.2 the total is 2102.88; losing 502 leaves 1601 = 25.02, 503 leaves 1600 = 25.0, 504 leaves 1599 = 24.98.
     */
    @ParameterizedTest
    @CsvSource({"1.4, -533, false, false", "1.4, -534, true, false", "1.2, -503, true, false", "1.2, -504, true, true"})
    void watches_the_energy_left_per_kg_of_fat_free_mass(double pal, double kcal, boolean warns, boolean stops) {
        Needs needs = TestEater.of(TestEater.body(Sex.MALE, 80, 180, 30, 20.0))
                .pal(pal)
                .kcalADay(kcal)
                .needs();
        assertThat(find(needs, "low_energy_availability").isPresent()).isEqualTo(warns);
        assertStop(needs, "low_energy_availability", stops);
    }

    @ParameterizedTest
    @CsvSource({"3.5, false", "3.51, true"})
    void warns_of_very_much_protein(double gPerKg, boolean warns) {
        Needs needs = MAN.protein(gPerKg).needs();
        assertThat(find(needs, "protein_very_high").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** A goal that makes no sense is refused too, not a fault. */
    @Test
    void answers_an_absurd_goal_with_a_stop() {
        assertStop(MAN.goal(new Goal.KgAWeek(-20)).needs(), "loss_too_fast", true);
    }
}
