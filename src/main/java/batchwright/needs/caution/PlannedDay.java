package batchwright.needs.caution;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The first day by which a weight may be reached: nothing stops the goal of that day, and something stops that of the day before. A later
 * day is never refused where a nearer one is planned, so that halving finds it.
 */
final class PlannedDay {
    /** The last day that a profile may name. */
    private static final int MOST_WEEKS = 104;

    private static final int PARTS = 2;

    private final GoalFinding goal;
    private final Goal.ReachWeight reach;
    private final LocalDate last;

    private PlannedDay(GoalFinding goal, Goal.ReachWeight reach) {
        this.goal = goal;
        this.reach = reach;
        this.last = reach.from().plusWeeks(MOST_WEEKS);
    }

    /** A sentence, after a blank, on the day planned in place of a refused one; empty for a goal without a day. */
    static String says(GoalFinding goal) {
        return goal.reach()
                .map(reach -> " " + new PlannedDay(goal, reach).says())
                .orElse("");
    }

    private String says() {
        String kg = Numerals.plain(reach.weight().kg()) + " kg";
        return never(kg)
                .orElseGet(() -> first().map(
                                day -> kg + " would be reached on " + day + " at the earliest, by eating an even "
                                        + Numerals.whole(on(day).intake().kcal()) + " kcal a day from now.")
                        .orElse("No day until " + last + ", the last that can be asked for, is planned for " + kg
                                + " with the answers so far; a weight nearer by may be."));
    }

    private Optional<String> never(String kg) {
        Energy least = goal.lossLimit().leastIntake(goal.model().start());
        return goal.change().loses()
                        && goal.model().dayOf(reach.weight().kg(), least).isEmpty()
                ? Optional.of("An even " + Numerals.up(least.kcal()) + " kcal a day never leads to " + kg
                        + ": weight would settle near "
                        + Numerals.whole(goal.model().settled(least).weightKg()) + " kg.")
                : Optional.empty();
    }

    private Optional<LocalDate> first() {
        LocalDate refused = reach.by();
        LocalDate planned = last;
        if (!refused.isBefore(planned) || !isPlanned(planned)) {
            return Optional.empty();
        }
        while (ChronoUnit.DAYS.between(refused, planned) > 1) {
            LocalDate middle = refused.plusDays(ChronoUnit.DAYS.between(refused, planned) / PARTS);
            if (isPlanned(middle)) {
                planned = middle;
            } else {
                refused = middle;
            }
        }
        return Optional.of(planned);
    }

    private boolean isPlanned(LocalDate day) {
        GoalFinding then = on(day);
        Targets targets = Targets.of(then.eater(), then.total(), then.change());
        return !GoalCautions.stop(then, targets)
                && AnswerCautions.of(then, targets).stream().noneMatch(Caution::stopsPlanning);
    }

    private GoalFinding on(LocalDate day) {
        Eater eater = goal.eater().withGoal(new Goal.ReachWeight(reach.weight(), reach.from(), day));
        return GoalFinding.of(eater, goal.total());
    }
}
