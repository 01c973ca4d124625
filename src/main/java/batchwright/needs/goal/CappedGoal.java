package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.evidence.Words;
import batchwright.needs.safety.SafeChange;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * A rate of loss that is no faster than advised, but takes too large a part of what little the eater burns, is slowed down to what may
 * be taken. A weight by a day is left as it is: its day would not hold.
 *
 * @param eater with the goal that is planned
 * @param asked what the profile asks for, when that is more
 */
public record CappedGoal(Eater eater, Optional<WeeklyChange> asked) {
    /** @param total energy a day that holds the weight */
    public static CappedGoal of(Eater eater, Energy total) {
        Body body = eater.body();
        BodyModel model = BodyModel.of(body, total, eater.activity().pal());
        WeeklyChange change = WeeklyChange.of(eater.goal(), model);
        SafeChange most = SafeChange.ofLoss(body, total);
        boolean capped = !(eater.goal() instanceof Goal.ReachWeight)
                && change.loses()
                && most.isExceededBy(change.kgAWeek(), change.kcalADay())
                && !SafeChange.ofLossAtAnyTotal(body).isExceededBy(change.kgAWeek(), change.kcalADay());
        return capped
                ? new CappedGoal(
                        eater.withGoal(new Goal.EnergyADay(-Words.down(most.kcalADay()))), Optional.of(change))
                : new CappedGoal(eater, Optional.empty());
    }
}
