package batchwright.needs.projection;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.dynamics.Course;
import batchwright.needs.dynamics.SafeLimits;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A goal in steps of four weeks. A rate takes a new intake in each, such that weight goes on changing as fast; a surplus or deficit is
 * counted from what holds the weight by then; a weight by a date keeps one intake until that day, where the steps end. Never less than may be eaten.
 *
 * @param steps in order; none when weight is held
 * @param held the same weeks at the intake of the first step
 * @param stopped why the steps end before the weeks asked for
 */
public record Stages(List<Stage> steps, Course held, Optional<String> stopped) {
    private static final double DAYS_A_WEEK = 7;

    /** @param weeks at least 1 */
    public static Stages of(GoalFinding goal, int weeks) {
        Body body = goal.eater().body();
        Course held = Course.of(body, goal.model(), goal.intake(), weeks);
        return new Builder(goal).follow(goal.isHold() ? 0 : Math.min(weeks, lastWeek(goal)), held);
    }

    /** The week in which the goal ends; none for a rate. */
    private static int lastWeek(GoalFinding goal) {
        return goal.reach().map(reach -> (int) Math.ceil(reach.weeks())).orElse(Integer.MAX_VALUE);
    }

    /** Whether a weight by a date is reached in them. */
    public boolean reach(GoalFinding goal) {
        return !steps.isEmpty() && steps.get(steps.size() - 1).lastWeek() == lastWeek(goal);
    }

    private static final class Builder {
        private final GoalFinding goal;
        private final BodyModel model;
        private final SafeLimits limits;
        private final List<Stage> steps = new ArrayList<>();

        Builder(GoalFinding goal) {
            this.goal = goal;
            this.model = goal.model();
            this.limits = new SafeLimits(goal.eater().body(), model.start());
        }

        Stages follow(int weeks, Course held) {
            BodyState now = model.start();
            for (int week = 1; week <= weeks; week += WeeklyChange.STEP_WEEKS) {
                Stage step = step(week, Math.min(weeks, week + WeeklyChange.STEP_WEEKS - 1), now);
                now = step.after();
                Optional<String> broken = limits.broken(now);
                if (broken.isPresent()) {
                    return new Stages(List.copyOf(steps), held, broken);
                }
                steps.add(step);
            }
            return new Stages(List.copyOf(steps), held, Optional.empty());
        }

        private Stage step(int first, int last, BodyState now) {
            double wanted = first == 1 ? goal.intake().kcal() : wanted(now);
            double least =
                    goal.change().loses() ? goal.lossLimit().leastIntake(now).kcal() : 0;
            boolean limited = goal.reach().isEmpty() && first > 1 && wanted < least;
            var intake = new Energy(limited ? Math.ceil(least) : Math.round(wanted));
            return new Stage(first, last, intake, model.after(days(first, last), intake, now), limited);
        }

        /** Of a weight by a date the last week may be a part of one. */
        private double days(int first, int last) {
            double end = goal.reach().map(Goal.ReachWeight::weeks).orElse((double) last);
            return (Math.min(last, end) - (first - 1)) * DAYS_A_WEEK;
        }

        /** Intake that the goal asks for from a body from now on [kcal/d]; 0 for a loss that cannot be had. */
        private double wanted(BodyState now) {
            return goal.eater().goal().match(new Goal.Cases<Double>() {
                @Override
                public Double percentAWeek(Goal.PercentAWeek rate) {
                    return ofRate(now, rate.percent() / 100 * now.weightKg());
                }

                @Override
                public Double kgAWeek(Goal.KgAWeek rate) {
                    return ofRate(now, rate.kg());
                }

                @Override
                public Double energyADay(Goal.EnergyADay change) {
                    return model.holding(now).kcal() + change.kcal();
                }

                @Override
                public Double reachWeight(Goal.ReachWeight reach) {
                    return goal.intake().kcal();
                }
            });
        }

        private double ofRate(BodyState now, double kgAWeek) {
            OptionalDouble intake = model.intakeFor(
                    now.weightKg() + WeeklyChange.STEP_WEEKS * kgAWeek, WeeklyChange.STEP_WEEKS * DAYS_A_WEEK, now);
            return intake.orElse(goal.change().loses() ? 0 : goal.intake().kcal());
        }
    }
}
