package batchwright.explain.cost;

import batchwright.explain.KnownCost;
import java.util.Optional;

/**
 * What a rule costs: the cheapest plan with it a little looser, and a little tighter, every other rule being kept.
 *
 * @param rule its name for people, with the unit
 * @param eater name of the one whose rule it is; empty when it is everybody's
 * @param now its figure
 * @param looser empty when it cannot be loosened so
 * @param tighter empty when it cannot be tightened so
 */
public record RuleCost(
        String rule, Optional<String> eater, String now, Optional<Moved> looser, Optional<Moved> tighter) {
    /**
     * The rule with another figure.
     *
     * @param to the other figure
     * @param cost of the cheapest plan then
     */
    public record Moved(String to, KnownCost cost) {
        /** Whether it is proven that this changes nothing. */
        boolean changesNothing(KnownCost base) {
            return cost.proven() && cost.equals(base);
        }
    }

    /** Whether it is proven that neither changes anything. */
    public boolean changesNothing(KnownCost base) {
        return looser.stream().allMatch(m -> m.changesNothing(base))
                && tighter.stream().allMatch(m -> m.changesNothing(base));
    }
}
