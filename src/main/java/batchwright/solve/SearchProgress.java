package batchwright.solve;

import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.mip.Completion.Found;

/** How far a search is, told to whoever watches: the cheapest plan so far and the greatest proven bound, when they are news. Costs in cents. */
final class SearchProgress {
    private final Watch watch;
    private final boolean plansOnly;
    private final Incumbents incumbents;
    private double greatestBound;

    SearchProgress(Watch watch) {
        this(watch, false, new Incumbents());
    }

    private SearchProgress(Watch watch, boolean plansOnly, Incumbents incumbents) {
        this.watch = watch;
        this.plansOnly = plansOnly;
        this.incumbents = incumbents;
    }

    /** For a side search: its plans are plans, but what it has proven is not proven of the whole. */
    SearchProgress ofPlansOnly() {
        return new SearchProgress(watch, true, incumbents);
    }

    /** All plans that were news. */
    Incumbents incumbents() {
        return incumbents;
    }

    /** The greatest bound that was told [cents]. */
    double greatestBound() {
        return greatestBound;
    }

    void found(Found<DaysSolution> plan) {
        if (incumbents.take(plan)) {
            watch.found(new Money(Math.round(plan.cost())));
        }
    }

    void bound(double bound) {
        double proven = Math.min(bound, incumbents.cheapest());
        if (!plansOnly && proven > greatestBound && Double.isFinite(proven)) {
            greatestBound = proven;
            watch.bound(new Money(Math.round(proven)));
        }
    }
}
