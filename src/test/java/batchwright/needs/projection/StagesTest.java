package batchwright.needs.projection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.Needs;
import batchwright.needs.TestEater;
import batchwright.needs.goal.GoalFinding;
import batchwright.person.Goal;
import batchwright.person.Sex;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class StagesTest {
    private static final TestEater MAN =
            TestEater.of(TestEater.body(Sex.MALE, 100, 180, 40, 30.0)).pal(1.7);

    private static Stages of(TestEater eater, int weeks) {
        return Stages.of(goal(eater), weeks);
    }

    private static GoalFinding goal(TestEater eater) {
        Needs needs = eater.needs();
        return needs.goal().orElseThrow();
    }

    private static List<Double> weights(Stages steps) {
        return steps.steps().stream().map(step -> step.after().weightKg()).toList();
    }

    @Test
    void a_rate_goes_on_and_takes_less_each_time() {
        List<Stage> steps = of(MAN.goal(new Goal.KgAWeek(-0.4)), 24).steps();
        double before = 100;
        double intake = Double.POSITIVE_INFINITY;
        for (Stage step : steps) {
            if (!step.limited()) {
                assertThat(before - step.after().weightKg()).isCloseTo(1.6, within(0.02));
                assertThat(step.intake().kcal()).isLessThan(intake);
            }
            before = step.after().weightKg();
            intake = step.intake().kcal();
        }
        assertThat(steps).hasSize(6);
        assertThat(steps.get(0).limited()).isFalse();
        assertThat(steps.get(1).limited()).isFalse();
    }

    @Test
    void the_first_step_is_the_plan_and_then_holding_it_does_less() {
        TestEater slim =
                TestEater.of(TestEater.body(Sex.MALE, 80, 180, 40, 18.0)).pal(1.7);
        Stages steps = of(slim.percentAWeek(0.25), 24);
        assertThat(steps.steps().get(0).intake().kcal())
                .isEqualTo(
                        slim.percentAWeek(0.25).needs().target().orElseThrow().energyAimKcal());
        assertThat(steps.held().after(24).orElseThrow().weightKg())
                .isLessThan(weights(steps).get(5));
    }

    /** A quarter of the total and more from BMI 30 on; whatever the rate asks for, never less than is allowed. */
    @Test
    void never_eats_less_than_a_loss_may() {
        TestEater slim =
                TestEater.of(TestEater.body(Sex.FEMALE, 74, 168, 38, 34.0)).pal(1.5);
        GoalFinding goal = goal(slim.percentAWeek(-0.6));
        Stages steps = Stages.of(goal, 24);
        assertThat(steps.steps()).anyMatch(Stage::limited);
        var before = goal.model().start();
        for (Stage step : steps.steps()) {
            assertThat(step.intake().kcal())
                    .isGreaterThanOrEqualTo(goal.lossLimit().leastIntake(before).kcal() - 1);
            before = step.after();
        }
    }

    @Test
    void a_weight_by_a_date_keeps_one_intake_and_ends_there() {
        LocalDate day = LocalDate.of(2026, 11, 30);
        var reach = new Goal.ReachWeight(new Mass(90), day, day.plusWeeks(30));
        Stages steps = of(MAN.goal(reach), 30);
        assertThat(steps.steps().stream().map(Stage::intake).distinct()).hasSize(1);
        assertThat(steps.steps().get(7).firstWeek()).isEqualTo(29);
        assertThat(steps.steps().get(7).lastWeek()).isEqualTo(30);
        assertThat(weights(steps).get(7)).isCloseTo(90, within(0.05));
    }

    /** 96 days are 13 weeks and 5 days: more weeks than that add no rows, and the last ends on the day, at the weight. */
    @Test
    void a_weight_by_a_date_is_not_followed_past_its_day() {
        LocalDate day = LocalDate.of(2026, 11, 25);
        var reach = new Goal.ReachWeight(new Mass(97), day, LocalDate.of(2027, 3, 1));
        Stages steps = of(MAN.goal(reach), 52);
        assertThat(steps.steps().get(steps.steps().size() - 1).lastWeek()).isEqualTo(14);
        assertThat(weights(steps).get(steps.steps().size() - 1)).isCloseTo(97, within(0.03));
        assertThat(steps.reach(
                        GoalFinding.of(MAN.goal(reach).eater(), MAN.needs().total())))
                .isTrue();
    }

    /** A deficit is counted from what holds the weight by then: the weight falls on, the intake with it. */
    @Test
    void a_deficit_follows_what_holds_the_weight() {
        List<Stage> steps = of(MAN.kcalADay(-300), 12).steps();
        assertThat(steps.get(0).intake().kcal() - steps.get(1).intake().kcal()).isBetween(5.0, 80.0);
        assertThat(steps.get(1).intake().kcal())
                .isGreaterThan(steps.get(2).intake().kcal());
    }

    @Test
    void who_holds_the_weight_has_no_steps() {
        assertThat(of(MAN.goal(Goal.HOLD), 12).steps()).isEmpty();
    }

    @Test
    void stops_where_a_loss_has_to_end_and_says_why() {
        TestEater near =
                TestEater.of(TestEater.body(Sex.FEMALE, 57, 172, 30, 25.0)).pal(1.8);
        Stages steps = Stages.of(
                GoalFinding.of(near.percentAWeek(-0.5).eater(), near.needs().total()), 52);
        assertThat(steps.stopped()).hasValueSatisfying(why -> assertThat(why).contains("under"));
        assertThat(steps.steps().size()).isLessThan(13);
    }
}
