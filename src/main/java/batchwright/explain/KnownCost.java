package batchwright.explain;

import batchwright.plan.Proof;
import batchwright.quantity.Money;
import java.util.Optional;

/**
 * What is known of the cheapest plan of a request.
 *
 * @param least no plan costs less
 * @param most cost of a plan that is known; empty when none is
 * @param noPlan whether it is proven that no plan keeps every rule; {@code least} then has no meaning
 */
public record KnownCost(Money least, Optional<Money> most, boolean noPlan) {
    public static final KnownCost NOTHING = new KnownCost(Money.ZERO, Optional.empty(), false);
    public static final KnownCost NO_PLAN = new KnownCost(Money.ZERO, Optional.empty(), true);

    public static KnownCost exactly(Money cost) {
        return new KnownCost(cost, Optional.of(cost), false);
    }

    /** Of a plan that was found. */
    public static KnownCost of(Proof proof) {
        return new KnownCost(proof.lowerBound(), Optional.empty(), false).notAbove(proof.cost());
    }

    /** Whether nothing is left to find out. */
    public boolean proven() {
        return noPlan || most.filter(least::equals).isPresent();
    }

    /** When a plan of this cost is known too. */
    public KnownCost notAbove(Money cost) {
        Money lower = most.filter(known -> known.compareTo(cost) < 0).orElse(cost);
        return new KnownCost(least.compareTo(lower) > 0 ? lower : least, Optional.of(lower), false);
    }

    /** When it is proven that no plan costs less than this. */
    public KnownCost notBelow(Money cost) {
        Money bound = most.filter(known -> known.compareTo(cost) < 0).orElse(cost);
        return noPlan || least.compareTo(bound) >= 0 ? this : new KnownCost(bound, most, false);
    }

    /** Whether it is proven that a plan costs no more than this. */
    public boolean isWithin(Money budget) {
        return most.filter(cost -> cost.compareTo(budget) <= 0).isPresent();
    }

    /** Whether it is proven that no plan costs so little. */
    public boolean isAbove(Money budget) {
        return noPlan || least.compareTo(budget) > 0;
    }
}
