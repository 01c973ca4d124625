package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By the rule of 7700, the comparison; what is planned: PromisedChangeTest. */
class WeeklyChangeTest {
    private static final Body OF_80_KG = TestEater.body(Sex.MALE, 80, 180, 30);

    /** 80 kg at 7700 kcal/kg: 0.25 % a week is 0.2 kg, 0.2 x 7700 / 7 = 220 kcal a day; and so on. */
    @ParameterizedTest
    @CsvSource({"0.25, 0.2, 220", "0.5, 0.4, 440", "1, 0.8, 880", "-1, -0.8, -880"})
    void per_cent_kg_and_kcal_are_the_same_goal(double percent, double kg, double kcal) {
        for (Goal goal : new Goal[] {new Goal.PercentAWeek(percent), new Goal.KgAWeek(kg), new Goal.EnergyADay(kcal)}) {
            WeeklyChange change = WeeklyChange.byRule(goal, OF_80_KG);
            assertThat(change.percentAWeek()).isCloseTo(percent, within(1e-12));
            assertThat(change.kgAWeek()).isCloseTo(kg, within(1e-12));
            assertThat(change.kcalADay()).isCloseTo(kcal, within(1e-9));
        }
    }

    /** The rule of thumb is 3500 kcal a pound (Wishnofsky 1958): within 1 % of 7700 kcal/kg. */
    @Test
    void the_rule_is_3500_kcal_a_pound() {
        assertThat(EnergyPerKg.RULE_KCAL * Mass.KG_PER_LB).isCloseTo(3500, within(35.0));
    }

    /** 80 kg to 76 kg in 10 weeks: 0.4 kg a week, 0.5 %, 0.4 x 7700 / 7 = 440 kcal a day less; and the way back. */
    @ParameterizedTest
    @CsvSource({"76, -0.4, -0.5, -440", "84, 0.4, 0.5, 440", "80, 0, 0, 0"})
    void a_weight_by_a_date_is_a_rate(double kg, double kgAWeek, double percent, double kcal) {
        LocalDate from = LocalDate.of(2026, 11, 25);
        WeeklyChange change =
                WeeklyChange.byRule(new Goal.ReachWeight(new Mass(kg), from, from.plusWeeks(10)), OF_80_KG);
        assertThat(change.kgAWeek()).isCloseTo(kgAWeek, within(1e-12));
        assertThat(change.percentAWeek()).isCloseTo(percent, within(1e-12));
        assertThat(change.kcalADay()).isCloseTo(kcal, within(1e-9));
    }

    @Test
    void weeks_count_from_the_day_to_the_day() {
        // 2026-11-25 to 2027-03-01: 5 days of November, 31, 31 and 28 days, and one of March: 96 days.
        var goal = new Goal.ReachWeight(new Mass(78), LocalDate.of(2026, 11, 25), LocalDate.of(2027, 3, 1));
        assertThat(goal.weeks()).isCloseTo(96 / 7.0, within(1e-12));
    }
}
