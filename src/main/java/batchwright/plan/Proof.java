package batchwright.plan;

import batchwright.quantity.Money;
import java.time.Duration;

/**
 * How sure it is that no plan is cheaper.
 *
 * @param cost checkout cost of the plan
 * @param lowerBound no plan that keeps every rule costs less than this
 * @param nodes how many relaxations were solved
 * @param took wall time of the search; the only value that may differ between two runs on the same files
 * @param interrupted whether somebody stopped the search before the proof
 * @param closeEnough whether the search ended before the proof because the cost is as close to the bound as was asked for
 */
public record Proof(Money cost, Money lowerBound, long nodes, Duration took, boolean interrupted, boolean closeEnough) {
    /** Before anything was searched. */
    public static final Proof NONE = new Proof(Money.ZERO, Money.ZERO, 0, Duration.ZERO);

    /** Of a search that nobody stopped. */
    public Proof(Money cost, Money lowerBound, long nodes, Duration took) {
        this(cost, lowerBound, nodes, took, false, false);
    }

    public boolean provenCheapest() {
        return lowerBound.compareTo(cost) >= 0;
    }

    /** What the same search has proven of another plan that it found. */
    public Proof of(Money otherCost) {
        return new Proof(otherCost, lowerBound, nodes, took, interrupted, closeEnough);
    }

    public Proof stoppedBySomebody(boolean stopped) {
        return new Proof(cost, lowerBound, nodes, took, stopped, closeEnough);
    }

    public Proof closeEnough(boolean close) {
        return new Proof(cost, lowerBound, nodes, took, interrupted, close);
    }
}
