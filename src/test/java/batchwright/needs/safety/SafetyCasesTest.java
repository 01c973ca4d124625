package batchwright.needs.safety;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.caution.Caution;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.Goal;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bodies and goals that were once planned or refused wrongly, or stand for many; each as a dietitian would decide. */
class SafetyCasesTest {
    private static Needs needs(Body body, double percentAWeek) {
        return TestEater.of(body).percentAWeek(percentAWeek).needs();
    }

    private static Needs agreed(Body body, double percentAWeek, Answer doctor) {
        return TestEater.of(body)
                .percentAWeek(percentAWeek)
                .health(TestEater.HEALTHY.withDoctorAgrees(doctor))
                .needs();
    }

    private static List<String> stops(Needs needs) {
        return needs.cautions().stream()
                .filter(Caution::stopsPlanning)
                .map(Caution::code)
                .toList();
    }

    private static List<String> codes(Needs needs) {
        return needs.cautions().stream().map(Caution::code).toList();
    }

    private static Caution caution(Needs needs, String code) {
        return needs.cautions().stream()
                .filter(c -> c.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_woman_of_24_with_10_per_cent_fat_is_not_helped_to_lose() {
        assertThat(stops(needs(TestEater.body(Sex.FEMALE, 58, 168, 24, 10.0), -0.5)))
                .containsExactly("body_fat_low");
    }

    @Test
    void a_man_with_3_per_cent_fat_is_not_helped_to_lose() {
        assertThat(stops(needs(TestEater.body(Sex.MALE, 75, 180, 30, 3.0), -0.5)))
                .contains("body_fat_low");
    }

    /** BMI 19.8. */
    @Test
    void a_woman_of_86_with_a_low_weight_is_not_helped_to_lose() {
        Needs needs = needs(TestEater.body(Sex.FEMALE, 48.2, 156, 86), -0.2);
        assertThat(stops(needs)).contains("older_low_loss", "goal_below_least_bmi");
    }

    /** NICE: 0.5-1 kg a week; NHLBI: 500-1000 kcal a day from BMI 35 on. Women of 165 cm, 40 years. */
    @ParameterizedTest
    @CsvSource({"108.9, sedentary", "141.6, sedentary", "108.9, chair", "141.6, chair"})
    void women_of_bmi_40_and_52_may_lose_what_guidelines_recommend(double kg, String day) {
        TestEater woman = TestEater.of(TestEater.body(Sex.FEMALE, kg, 165, 40)).percentAWeek(-0.6);
        Needs needs = day.equals("chair") ? woman.pal(1.2).needs() : woman.needs();
        assertThat(stops(needs)).isEmpty();
        assertThat(codes(needs)).contains("bmi_40_or_more");
        assertThat(-needs.goalKcal())
                .isBetween(400.0, 1000.0)
                .isLessThanOrEqualTo(0.25 * needs.total().kcal() + 1);
    }

    /** 165 cm, 141.6 kg. */
    @Test
    void a_gain_at_bmi_52_is_refused() {
        assertThat(stops(needs(TestEater.body(Sex.FEMALE, 141.6, 165, 40), 0.5)))
                .contains("gain_mostly_fat");
    }

    /** 180 cm, 52.2 kg. */
    @Test
    void a_fast_gain_at_bmi_16_is_refused_and_a_slow_one_starts_in_steps() {
        Body thin = TestEater.body(Sex.MALE, 52.2, 180, 25);
        assertThat(stops(needs(thin, 2))).contains("gain_too_fast");
        Needs slow = needs(thin, 0.5);
        assertThat(stops(slow)).isEmpty();
        assertThat(codes(slow)).contains("underweight");
        assertThat(slow.goalKcal()).isLessThanOrEqualTo(500);
    }

    @Test
    void at_17_there_are_no_figures() {
        Needs needs = needs(TestEater.body(Sex.FEMALE, 60, 165, 17.9), 0);
        assertThat(stops(needs)).containsExactly("under_18");
        assertThat(needs.hidesFigures()).isTrue();
    }

    /** BMI 27, 72 years: asked, then a warning or a refusal. */
    @Test
    void from_70_years_on_a_doctor_is_asked_before_any_loss() {
        Body old = TestEater.body(Sex.MALE, 83, 175, 72);
        Caution ask = caution(agreed(old, -0.3, Answer.NOT_SAID), "older_loss");
        assertThat(ask.stopsPlanning()).isTrue();
        assertThat(ask.asks()).containsExactly("health.doctor_agrees");
        assertThat(ask.text()).contains("health: doctor_agrees: yes");
        assertThat(stops(agreed(old, -0.3, Answer.YES))).isEmpty();
        assertThat(codes(agreed(old, -0.3, Answer.YES))).contains("older_loss");
        Caution no = caution(agreed(old, -0.3, Answer.NO), "older_loss");
        assertThat(no.stopsPlanning()).isTrue();
        assertThat(no.asks()).isEmpty();
    }

    /** BMI 32: with a measured low fat it is muscle. */
    @Test
    void a_gain_at_bmi_32_is_asked_about_and_planned_for_the_muscular() {
        assertThat(caution(needs(TestEater.body(Sex.MALE, 104, 180, 30), 0.2), "gain_mostly_fat")
                        .asks())
                .contains("body_fat_method", "health.doctor_agrees");
        assertThat(stops(needs(TestEater.body(Sex.MALE, 104, 180, 30, 17.0), 0.2)))
                .isEmpty();
        assertThat(stops(needs(TestEater.body(Sex.MALE, 104, 180, 30, 33.0), 0.2)))
                .contains("gain_mostly_fat");
    }

    /** Mifflin 784 kcal, at PAL 1.2 941 kcal. */
    @Test
    void a_small_old_person_may_hold_her_weight_below_1200_kcal() {
        Needs needs =
                TestEater.of(TestEater.body(Sex.FEMALE, 50, 148, 80)).pal(1.2).needs();
        assertThat(needs.target()).isPresent();
        assertThat(codes(needs)).contains("intake_below_floor");
        assertThat(stops(needs)).isEmpty();
    }

    /** Man, 14 % fat by callipers (error 4): the floor at the end is 8 % and one point more. */
    @Test
    void a_weight_that_is_too_lean_is_no_goal() {
        Body lean = TestEater.body(Sex.MALE, 80, 180, 30)
                .withFat(new BodyFat.Measured(Share.ofPercent(14), FatMethod.CALLIPERS));
        assertThat(SafeEnd.of(lean).fatPercent()).isEqualTo(9);
        assertThat(stops(TestEater.of(lean)
                        .pal(2.0)
                        .goal(new Goal.ReachWeight(new Mass(67), LocalDate.of(2026, 11, 30), LocalDate.of(2027, 9, 30)))
                        .needs()))
                .containsExactly("goal_below_least_fat");
    }

    /** Woman, 110 kg, BMI 40, 40 years, PAL 1.2: a quarter of the total is 530 kcal. */
    @Test
    void a_rate_that_only_a_low_total_stops_is_slowed_down_and_said() {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 110, 165, 40))
                .pal(1.2)
                .kcalADay(-700)
                .needs();
        assertThat(stops(needs)).isEmpty();
        assertThat(-needs.goalKcal())
                .isBetween(0.24 * needs.total().kcal(), 0.25 * needs.total().kcal());
        assertThat(caution(needs, "loss_slowed").text()).contains("700 kcal a day less than the total");
    }

    /** Woman of 30 years, 55 kg, PAL 1.2: total 1540. */
    @Test
    void an_aim_below_resting_energy_gets_a_caution() {
        Needs needs = TestEater.of(TestEater.body(Sex.FEMALE, 65, 165, 30))
                .pal(1.2)
                .kcalADay(-350)
                .needs();
        assertThat(stops(needs)).isEmpty();
        assertThat(codes(needs)).contains("aim_below_resting");
    }
}
