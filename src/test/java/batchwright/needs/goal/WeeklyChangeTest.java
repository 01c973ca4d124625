package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeeklyChangeTest {
    private static final Body OF_80_KG = TestEater.body(Sex.MALE, 80, 180, 30);

    /** 80 kg at 7700 kcal/kg: 0.25 % a week is 0.2 kg, 0.2 x 7700 / 7 = 220 kcal a day; and so on. */
    @ParameterizedTest
    @CsvSource({"0.25, 0.2, 220", "0.5, 0.4, 440", "1, 0.8, 880", "-1, -0.8, -880"})
    void per_cent_kg_and_kcal_are_the_same_goal(double percent, double kg, double kcal) {
        for (Goal goal : new Goal[] {new Goal.PercentAWeek(percent), new Goal.KgAWeek(kg), new Goal.EnergyADay(kcal)}) {
            WeeklyChange change = WeeklyChange.of(goal, OF_80_KG);
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

    /** Hall 2008 finds that the rule of thumb holds from about 30 kg of body fat on, and is too high for leaner people. */
    @Test
    void the_rule_meets_body_composition_at_about_30_kg_of_fat() {
        assertThat(EnergyPerKg.byComposition(new Mass(30)) / EnergyPerKg.RULE_KCAL)
                .isBetween(0.95, 1.05);
        assertThat(EnergyPerKg.byComposition(new Mass(10))).isLessThan(EnergyPerKg.RULE_KCAL);
    }

    /** Arithmetic: (39.5 FM + 7.6 x 10.4) / (10.4 + FM) MJ/kg, worked out with kcal rounded per kg: within 1 kcal. */
    @ParameterizedTest
    @CsvSource({"10, 5554", "20, 6832", "30, 7478", "40, 7868"})
    void body_composition_follows_forbes(double fatKg, double kcal) {
        assertThat(EnergyPerKg.byComposition(new Mass(fatKg))).isCloseTo(kcal, within(1.0));
    }

    @Test
    void says_the_goal_in_words() {
        assertThat(WeeklyChange.of(new Goal.PercentAWeek(-0.5), OF_80_KG).says(OF_80_KG))
                .isEqualTo("-440 kcal a day, to lose about 0.40 kg (0.50 %) a week at 7700 kcal per kg");
        assertThat(WeeklyChange.of(Goal.HOLD, OF_80_KG).says(OF_80_KG)).isEqualTo("hold the weight");
    }

    /** 80 kg at 12.5 % is 10 kg of fat: 5554 kcal/kg, 28 % under the rule. At 37.5 % it is 30 kg: 7478, 3 % under, not worth a word. */
    @Test
    void mentions_body_composition_when_it_differs_by_more_than_a_tenth() {
        Body lean = TestEater.body(Sex.MALE, 80, 180, 30, 12.5);
        Body fat = TestEater.body(Sex.MALE, 80, 180, 30, 37.5);
        Goal goal = new Goal.PercentAWeek(0.25);
        assertThat(WeeklyChange.of(goal, lean).says(lean))
                .endsWith(
                        "with this body fat 1 kg may stand for about 5550 kcal, so weight may change faster (Forbes 1987; Hall"
                                + " 2008)");
        assertThat(WeeklyChange.of(goal, fat).says(fat)).endsWith("at 7700 kcal per kg");
    }
}
