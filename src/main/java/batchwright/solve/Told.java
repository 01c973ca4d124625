package batchwright.solve;

import batchwright.plan.Watch;
import batchwright.quantity.Money;

/** What whoever watches was told: only what is news. Costs in cents. */
final class Told {
    private final Watch watch;
    private final boolean plansOnly;
    private final double[] cheapest;
    private double greatestBound;

    Told(Watch watch) {
        this(watch, false, new double[] {Double.POSITIVE_INFINITY});
    }

    private Told(Watch watch, boolean plansOnly, double[] cheapest) {
        this.watch = watch;
        this.plansOnly = plansOnly;
        this.cheapest = cheapest;
    }

    /** For a side search: its plans are plans, but what it has proven is not proven of the whole. */
    Told ofPlansOnly() {
        return new Told(watch, true, cheapest);
    }

    void found(double cost) {
        if (cost < cheapest[0]) {
            cheapest[0] = cost;
            watch.found(new Money(Math.round(cost)));
        }
    }

    void bound(double bound) {
        double proven = Math.min(bound, cheapest[0]);
        if (!plansOnly && proven > greatestBound && Double.isFinite(proven)) {
            greatestBound = proven;
            watch.bound(new Money(Math.round(proven)));
        }
    }
}
