package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static batchwright.needs.caution.HealthCautionsTest.find;
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

    /**
     * At 200 cm, BMI 18.5 is 74 kg. Losing 0.5 % a week for 12 weeks leaves 94 %: 74 / 0.94 = 78.72 kg is the edge. Below BMI 20, 80 kg,
     * the table of decisions asks for more.
     */
    @ParameterizedTest
    @CsvSource({"73.9, true", "78.7, true", "80, false"})
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

    /** PAL 1.6: the total is 2848 kcal and a quarter 712. It is slowed down to that, and said. */
    @ParameterizedTest
    @CsvSource({"-712, false", "-713, true"})
    void slows_a_deficit_of_more_than_a_quarter_down(double kcal, boolean slowed) {
        Needs needs = MAN.pal(1.6).kcalADay(kcal).needs();
        assertThat(needs.stopsPlanning()).isFalse();
        assertThat(needs.goalKcal()).isEqualTo(-712);
        assertThat(find(needs, "loss_slowed").isPresent()).isEqualTo(slowed);
    }

    /** Man, 120 kg, 190 cm, 30 years: Mifflin 1200 + 1187.5 - 150 + 5 = 2242.5; x 2 = 4485; a quarter 1121, and more at its BMI of 33; 1000 kcal are less than 1 kg a week. */
    @ParameterizedTest
    @CsvSource({"-1000, false", "-1001, true"})
    void stops_a_deficit_of_more_than_1000_kcal(double kcal, boolean stops) {
        TestEater big = TestEater.of(TestEater.body(Sex.MALE, 120, 190, 30));
        assertStop(big.pal(2.0).kcalADay(kcal).needs(), "loss_too_fast", stops);
    }

    /** At PAL 1.6 a quarter of the total is 712 kcal. */
    @Test
    void says_how_fast_would_do() {
        Needs needs = MAN.pal(1.6).kcalADay(-1100).needs();
        assertThat(find(needs, "loss_too_fast").orElseThrow().text())
                .contains("1100 kcal a day less")
                .contains("is 712 kcal less, about 0.");
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
