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
    void says_the_goal_in_words_and_the_rule_only_beside_it() {
        assertThat(of(new Goal.PercentAWeek(-0.5), OF_80_KG).says())
                .matches("-\\d{3} kcal a day, to lose about 0\\.40 kg \\(0\\.50 %\\) a week in the next four weeks"
                        + " \\(by the rule of 7700 kcal per kg: -440 kcal\\)");
        assertThat(of(new Goal.EnergyADay(-440), OF_80_KG).says())
                .startsWith("-440 kcal a day, to lose about 0.")
                .endsWith("in the next four weeks (by the rule of 7700 kcal per kg: 0.40 kg)");
        assertThat(of(Goal.HOLD, OF_80_KG).says()).isEqualTo("hold the weight");
        assertThat(of(Goal.HOLD, OF_80_KG).notes()).isEmpty();
    }

    @Test
    void says_what_holding_the_intake_does_and_how_much_is_water() {
        GoalFinding goal = of(new Goal.PercentAWeek(0.25), OF_80_KG);
        assertThat(goal.notes())
                .last()
                .satisfies(
                        note -> assertThat(note.says())
                                .matches(
                                        "The same 2\\d{3} kcal all along lead to about 8\\d\\.\\d kg in 12 weeks, 8\\d\\.\\d kg in 52 weeks,"
                                                + " 8\\d\\.\\d kg in the end\\. Of the 0\\.8 kg of the first four weeks about 0\\.\\d are water\\. .*"));
        Held held = goal.held().orElseThrow();
        double first = held.year().after(12).orElseThrow().weightKg();
        double second = held.year().after(52).orElseThrow().weightKg();
        assertThat(80).isLessThan((int) Math.ceil(first));
        assertThat(second).isBetween(first, held.settled().orElseThrow().weightKg());
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
    }

    @Test
    void an_error_larger_than_the_body_fat_is_no_fault() {
        assertThat(of(new Goal.PercentAWeek(0.25), estimated(3, 4.1)).perKg())
                .hasValueSatisfying(
                        perKg -> assertThat(perKg.least()).isPositive().isLessThan(perKg.kcal()));
    }

    /** 80 kg to 75 kg in 20 weeks: 0.25 kg a week, 275 kcal a day by the rule; by the model more, for a lighter body needs less. */
    @Test
    void a_weight_by_a_date_is_one_intake_and_what_holds_it_then() {
        GoalFinding goal = of(reach(75, 20), TestEater.body(Sex.MALE, 80, 180, 30, 25.0));
        assertThat(goal.says())
                .matches(
                        "reach 75 kg by 2027-04-14, in 20\\.0 weeks: -\\d{3} kcal a day all along, to lose about 0\\.\\d\\d kg"
                                + " \\(0\\.\\d\\d %\\) a week in the next four weeks, 0\\.25 kg on average \\(by the rule of 7700 kcal per kg: -275 kcal\\)");
        assertThat(goal.change().kcalADay()).isLessThan(-275);
        assertThat(goal.held()).isEmpty();
        double holds = goal.holdsAfterwards().orElseThrow().kcal();
        assertThat(holds).isBetween(goal.intake().kcal(), TOTAL.kcal());
        assertThat(goal.notes())
                .last()
                .satisfies(note -> assertThat(note.says()).contains("hold it"));
        assertThat(goal.weeksToReach()).hasValue(20);
    }

    @Test
    void a_weight_that_is_there_already_is_held() {
        assertThat(of(reach(80, 10), OF_80_KG).says()).isEqualTo("hold the weight");
        assertThat(of(reach(80, 10), OF_80_KG).notes()).isEmpty();
    }
}
