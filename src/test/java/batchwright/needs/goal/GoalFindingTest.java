package batchwright.needs.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.TestEater;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class GoalFindingTest {
    private static final Body OF_80_KG = TestEater.body(Sex.MALE, 80, 180, 30);
    private static final Energy TOTAL = new Energy(2800);
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static GoalFinding of(Goal goal, Body body) {
        return GoalFinding.of(TestEater.of(body).goal(goal).eater(), TOTAL);
    }

    private static Goal reach(double kg, int weeks) {
        return new Goal.ReachWeight(new Mass(kg), DAY, DAY.plusWeeks(weeks));
    }

    private static Body estimated(double percent, double errorPoints) {
        return OF_80_KG.withFat(new BodyFat.Estimated(Share.ofPercent(percent), "somebody", errorPoints, true));
    }

    @Test
    void says_the_goal_in_words() {
        assertThat(of(new Goal.PercentAWeek(-0.5), OF_80_KG).says())
                .isEqualTo("-440 kcal a day, to lose about 0.40 kg (0.50 %) a week at 7700 kcal per kg");
        assertThat(of(Goal.HOLD, OF_80_KG).says()).isEqualTo("hold the weight");
        assertThat(of(Goal.HOLD, OF_80_KG).notes()).isEmpty();
    }

    /** 80 kg at 12.5 % is 10 kg of fat: 5554 kcal/kg, 28 % under the rule. At 37.5 % it is 30 kg: 7478, 3 % under, not worth a word. */
    @Test
    void mentions_body_composition_when_it_differs_by_more_than_a_tenth() {
        Goal goal = new Goal.PercentAWeek(0.25);
        assertThat(of(goal, TestEater.body(Sex.MALE, 80, 180, 30, 12.5)).says())
                .endsWith(
                        "with this body fat 1 kg may stand for about 5550 kcal (4720 to 6140 with the error of body fat), so weight may change faster (Forbes 1987; Hall"
                                + " 2008)");
        assertThat(of(goal, TestEater.body(Sex.MALE, 80, 180, 30, 37.5)).says()).endsWith("at 7700 kcal per kg");
    }

    /**
     * 80 kg at 12.5 +- 5 %: 10 kg of fat, 6 to 14. (39.5 x 6 + 7.6 x 10.4) / 16.4 = 19.271 MJ = 4606 kcal;
     * (39.5 x 14 + 79.04) / 24.4 = 25.903 MJ = 6191 kcal.
     */
    @Test
    void an_estimate_carries_its_error_along() {
        GoalFinding goal = of(new Goal.PercentAWeek(0.25), estimated(12.5, 5));
        assertThat(goal.perKg()).hasValueSatisfying(perKg -> {
            assertThat(perKg.kcal()).isCloseTo(5554, within(1.0));
            assertThat(perKg.least()).isCloseTo(4606, within(1.0));
            assertThat(perKg.most()).isCloseTo(6191, within(1.0));
        });
        assertThat(goal.says()).contains("about 5550 kcal (4610 to 6190 with the error of body fat)");
    }

    @Test
    void an_error_larger_than_the_body_fat_is_no_fault() {
        assertThat(of(new Goal.PercentAWeek(0.25), estimated(3, 4.1)).perKg())
                .hasValueSatisfying(
                        perKg -> assertThat(perKg.least()).isPositive().isLessThan(perKg.kcal()));
    }

    /** 80 kg at 25 % is 20 kg of fat; 5 kg less stand for 6683 kcal each (arithmetic, EnergyPerKgTest): in 10 weeks 477 kcal a day. */
    @Test
    void a_weight_by_a_date_uses_the_whole_change() {
        GoalFinding goal = of(reach(75, 10), TestEater.body(Sex.MALE, 80, 180, 30, 25.0));
        assertThat(goal.says())
                .isEqualTo(
                        "reach 75 kg by 2027-02-03, in 10.0 weeks: -550 kcal a day, to lose about 0.50 kg (0.63 %) a week at"
                                + " 7700 kcal per kg; with this body fat 1 kg of all this may stand for about 6680 kcal (6300 to 6980 with the error of body fat): -477 kcal a day if"
                                + " needs stayed as they are (Forbes 1987; Hall 2007)");
        assertThat(goal.notes())
                .last()
                .satisfies(note ->
                        assertThat(note.says()).startsWith("Change slows").contains("--weeks 10"));
    }

    @Test
    void a_weight_that_is_there_already_is_held() {
        assertThat(of(reach(80, 10), OF_80_KG).says()).isEqualTo("hold the weight");
        assertThat(of(reach(80, 10), OF_80_KG).notes()).isEmpty();
    }
}
