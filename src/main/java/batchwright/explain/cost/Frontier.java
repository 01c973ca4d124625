package batchwright.explain.cost;

import batchwright.explain.KnownCost;
import batchwright.plan.TradeOff;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest plan at each of some levels of something else, each level solved for; in between a plan may cost anything from
 * the level below to that above. Levels are changes for every eater alike, of the protein floor or of the energy aim.
 *
 * @param points from the lowest level, or the smallest budget, to the highest; at most {@link #MOST_POINTS}
 */
public record Frontier(TradeOff against, List<Point> points) {
    public static final int MOST_POINTS = 12;

    public Frontier {
        points = List.copyOf(points);
    }

    /**
     * A level.
     *
     * @param change of every eater's floor or aim [g or kcal a day]; of a budget, 0
     * @param cost of the cheapest plan there; of a budget, the budget itself
     * @param reach how much protein this cost buys; empty when energy is asked for, or there is no plan
     * @param inForce whether this is the plan that was asked for
     */
    public record Point(int change, KnownCost cost, Optional<ProteinReach> reach, boolean inForce) {}
}
