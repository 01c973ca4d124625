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
import java.util.regex.Pattern;
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
        Needs needs = reach(kg, 40);
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

    /** 0.6 kg a week from 80.5 kg for 12 weeks would end below 74 kg; the goal ends at 79. */
    @Test
    void a_goal_that_ends_is_judged_by_its_end() {
        TestEater slight = TestEater.of(TestEater.body(Sex.MALE, 80.5, 200, 30)).pal(2.0);
        assertStop(slight.goal(new Goal.KgAWeek(-0.6)).needs(), "goal_below_bmi_18_5", true);
        assertStop(reach(slight, 79, DAY.plusWeeks(9)), "goal_below_bmi_18_5", false);
    }

    /** Man of 100 kg, BMI 25. The day that is named is not refused, the day before is. */
    @Test
    void names_the_first_day_that_is_not_too_fast() {
        TestEater man = TestEater.of(TestEater.body(Sex.MALE, 100, 200, 30)).pal(2.0);
        Needs fast = reach(man, 95, DAY.plusWeeks(4));
        assertStop(fast, "loss_too_fast", true);
        var day = Pattern.compile("95 kg would be reached on (\\d{4}-\\d{2}-\\d{2}) at the earliest")
                .matcher(find(fast, "loss_too_fast").orElseThrow().text());
        assertThat(day.find()).isTrue();
        LocalDate earliest = LocalDate.parse(day.group(1));
        assertStop(reach(man, 95, earliest), "loss_too_fast", false);
        assertStop(reach(man, 95, earliest.minusDays(1)), "loss_too_fast", true);
    }

    @Test
    void names_no_day_for_a_weight_that_is_refused() {
        assertThat(find(reach(60, 4), "loss_too_fast").orElseThrow().text()).doesNotContain("reached on");
    }

    /** 1 % of 80 kg is 0.8 kg a week: on average 0.6 kg a week are less, but the first weeks are faster. */
    @ParameterizedTest
    @CsvSource({"83, false", "87, true", "89, true"})
    void refuses_a_gain_that_is_too_fast(double kg, boolean stops) {
        assertStop(reach(kg, 10), "gain_too_fast", stops);
    }

    @ParameterizedTest
    @CsvSource({"119.9, false", "120, true"})
    void warns_of_a_gain_to_bmi_30(double kg, boolean warns) {
        Needs needs = reach(TestEater.of(TestEater.body(Sex.MALE, 95, 200, 30)).pal(2.0), kg, DAY.plusWeeks(104));
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
