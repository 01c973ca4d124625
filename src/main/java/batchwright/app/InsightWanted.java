package batchwright.app;

import batchwright.plan.TradeOff;
import java.util.Optional;

/**
 * What to find out beside a plan. Each takes at most as long as the plan may.
 *
 * @param why what each rule costs, what just missed
 * @param frontier what to set the cost against
 * @param secondOpinion what a solver from elsewhere says
 */
public record InsightWanted(boolean why, Optional<TradeOff> frontier, boolean secondOpinion) {
    public static final InsightWanted NONE = new InsightWanted(false, Optional.empty(), false);
}
