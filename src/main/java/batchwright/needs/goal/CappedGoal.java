package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.safety.SafeChange;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * A rate that is no faster than advised, but takes a larger deficit than is planned, or a larger surplus than an underweight body starts
 * with, is slowed down to the largest that is. A weight by a day is left as it is: its day would not hold.
 *
 * @param eater with the goal that is planned
 * @param asked what the profile asks for, when that is more
 */
public record CappedGoal(Eater eater, Optional<WeeklyChange> asked) {
    private static final double UNDERWEIGHT_BMI = 18.5;

    /** @param total energy a day that holds the weight */
    public static CappedGoal of(Eater eater, Energy total) {
        if (eater.goal() instanceof Goal.ReachWeight) {
            return new CappedGoal(eater, Optional.empty());
        }
        Body body = eater.body();
        WeeklyChange change = WeeklyChange.of(
                eater.goal(), BodyModel.of(body, total, eater.activity().pal()));
        boolean maySlow = change.loses() || (change.gains() && Numerals.below(body.bmi(), UNDERWEIGHT_BMI));
        SafeChange most = change.loses() ? SafeChange.ofLoss(body, total) : SafeChange.ofGain(body, total);
        return maySlow && most.isExceededBy(0, change.kcalADay()) && !isTooFast(eater, change, most)
                ? new CappedGoal(
                        eater.withGoal(new Goal.EnergyADay((change.loses() ? -1 : 1) * Numerals.down(most.kcalADay()))),
                        Optional.of(change))
                : new CappedGoal(eater, Optional.empty());
    }

    /** A rate is judged by itself, an energy by both. */
    private static boolean isTooFast(Eater eater, WeeklyChange change, SafeChange most) {
        if (!(eater.goal() instanceof Goal.EnergyADay)) {
            return most.isExceededBy(change.kgAWeek(), 0);
        }
        return change.gains()
                || SafeChange.ofLossAtAnyTotal(eater.body()).isExceededBy(change.kgAWeek(), change.kcalADay());
    }
}
