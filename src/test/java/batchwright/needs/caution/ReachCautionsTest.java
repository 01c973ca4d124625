package batchwright.needs.caution;

import static batchwright.needs.caution.HealthCautionsTest.assertStop;
import static batchwright.needs.caution.HealthCautionsTest.find;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A weight by a date; man, 80 kg, 200 cm, 30 years, where BMI 18.5 is 74 kg and BMI 30 is 120 kg. PAL 2.0: total 3810 kcal. */
class ReachCautionsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final TestEater MAN =
            TestEater.of(TestEater.body(Sex.MALE, 80, 200, 30)).pal(2.0);

    private static Needs reach(TestEater eater, double kg, LocalDate by) {
        return eater.goal(new Goal.ReachWeight(new Mass(kg), DAY, by)).needs();
    }

    private static Needs reach(double kg, int weeks) {
        return reach(MAN, kg, DAY.plusWeeks(weeks));
    }

    @ParameterizedTest
    @CsvSource({"73.9, true", "74, false"})
    void refuses_a_weight_below_bmi_18_5(double kg, boolean stops) {
        Needs needs = reach(kg, 20);
        assertStop(needs, "goal_below_bmi_18_5", stops);
        if (stops) {
            assertThat(find(needs, "goal_below_bmi_18_5").orElseThrow().text())
                    .contains(
                            "73.9 kg would be a BMI of 18.5, under 18.5",
                            "The least that is planned to here is 74.0 kg");
        }
    }

    /** Upwards too: 70 kg at 200 cm is BMI 17.5. */
    @Test
    void refuses_it_to_who_gains() {
        assertStop(
                reach(TestEater.of(TestEater.body(Sex.MALE, 68, 200, 30)), 70, DAY.plusWeeks(20)),
                "goal_below_bmi_18_5",
                true);
    }

    /** 0.3 kg a week from 78 kg for 12 weeks would end below 74 kg; the goal ends at 75. */
    @Test
    void a_goal_that_ends_is_judged_by_its_end() {
        TestEater slight = TestEater.of(TestEater.body(Sex.MALE, 78, 200, 30)).pal(2.0);
        assertStop(slight.goal(new Goal.KgAWeek(-0.35)).needs(), "goal_below_bmi_18_5", true);
        assertStop(reach(slight, 75, DAY.plusWeeks(9)), "goal_below_bmi_18_5", false);
    }

    /** 1 % a week of 80 kg is 0.8 kg at first and then less, for the intake is even: 4 kg take over 5 weeks. */
    @Test
    void names_the_first_day_that_is_not_too_fast() {
        Needs fast = reach(76, 4);
        assertStop(fast, "loss_too_fast", true);
        String text = find(fast, "loss_too_fast").orElseThrow().text();
        assertThat(text)
                .containsPattern(
                        "76 kg would be reached on 2027-01-\\d\\d at the earliest, by an even \\d{4} kcal a day");
        LocalDate day = LocalDate.parse(text.replaceFirst(".*reached on (\\S+) at.*", "$1"));
        assertStop(reach(MAN, 76, day), "loss_too_fast", false);
        assertStop(reach(MAN, 76, day.minusDays(1)), "loss_too_fast", true);
    }

    @Test
    void names_no_day_for_a_weight_that_is_refused() {
        assertThat(find(reach(60, 4), "loss_too_fast").orElseThrow().text()).doesNotContain("reached on");
    }

    /** 2 % of 80 kg is 1.6 kg a week. At 0.5 %, 0.4 kg a week, 17 kg take 42.5 weeks or 297.5 days. */
    @ParameterizedTest
    @CsvSource({"96, false", "97, true"})
    void refuses_a_gain_that_no_rate_could_ask_for(double kg, boolean stops) {
        Needs needs = reach(kg, 10);
        assertStop(needs, "gain_too_fast", stops);
        if (stops) {
            assertThat(find(needs, "gain_too_fast").orElseThrow().text())
                    .contains("97 kg would be reached on " + DAY.plusDays(298));
        }
    }

    @ParameterizedTest
    @CsvSource({"119.9, false", "120, true"})
    void warns_of_a_gain_to_bmi_30(double kg, boolean warns) {
        Needs needs = reach(kg, 100);
        assertThat(find(needs, "goal_bmi_30_or_more").isPresent()).isEqualTo(warns);
        assertThat(needs.stopsPlanning()).isFalse();
    }

    /** NHLBI, obesity guidelines 1998 and 2000: 10 % over 6 months. Man of 120 kg: 108 kg. */
    @ParameterizedTest
    @CsvSource({"108, false", "107.9, true"})
    void names_the_usual_first_step_of_ten_per_cent(double kg, boolean warns) {
        Needs needs = reach(TestEater.of(TestEater.body(Sex.MALE, 120, 200, 30)).pal(2.0), kg, DAY.plusWeeks(40));
        assertThat(find(needs, "loss_over_10_percent").isPresent()).isEqualTo(warns);
        if (warns) {
            assertThat(find(needs, "loss_over_10_percent").orElseThrow().text()).contains("to 108.0 kg");
        }
    }
}
