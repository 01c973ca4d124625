package batchwright.explain.cost;

import batchwright.explain.KnownCost;
import batchwright.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * Why a plan costs what it costs. Every figure comes from solving a changed request; what time did not suffice for says so.
 *
 * @param cost of the plan itself
 * @param rules what each rule costs; empty when the plan is not proven cheapest: there would be nothing to compare with
 * @param protein more of it
 * @param misses foods that just missed
 * @param missesComplete whether time sufficed to look for them
 * @param items what each food that is bought costs, dearest first
 */
public record Why(
        KnownCost cost,
        List<RuleCost> rules,
        Protein protein,
        List<NearMiss> misses,
        boolean missesComplete,
        List<ItemCost> items) {
    public Why {
        rules = List.copyOf(rules);
        misses = List.copyOf(misses);
        items = List.copyOf(items);
    }

    /**
     * Money against protein, near the plan. Every eater's floor is moved by the same grams.
     *
     * @param grams so much more protein a day
     * @param more what that costs
     * @param money so much more or less money
     * @param forMore how much protein so much more money buys
     * @param forLess how much so much less money buys; empty when the plan costs less than that
     */
    public record Protein(
            int grams, KnownCost more, Money money, ProteinReach forMore, Optional<ProteinReach> forLess) {}
}
