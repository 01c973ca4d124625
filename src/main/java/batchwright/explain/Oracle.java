package batchwright.explain;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner;
import batchwright.plan.Planner.Possible;
import java.time.Duration;
import java.util.function.LongSupplier;

/** Asks whether there is any plan, each time with little patience, until a moment after which nothing more becomes known. */
final class Oracle {
    /** Asking for less than this is not worth it. */
    private static final long LEAST_NANOS = 10_000_000;

    private final Planner planner;
    private final LongSupplier nanos;
    private final Duration patience;
    private final long end;

    /**
     * @param nanos a clock [ns]
     * @param patience for one question
     * @param all for all questions together, from now
     */
    Oracle(Planner planner, LongSupplier nanos, Duration patience, Duration all) {
        this.planner = planner;
        this.nanos = nanos;
        this.patience = patience;
        this.end = nanos.getAsLong() + all.toNanos();
    }

    /** The same for one of so many equal shares of the time that is left. */
    Oracle shareOf(int shares) {
        return new Oracle(planner, nanos, patience, Duration.ofNanos(left() / shares));
    }

    private long left() {
        return Math.max(0, end - nanos.getAsLong());
    }

    Possible ask(PlanRequest request) {
        long left = Math.min(patience.toNanos(), left());
        return left < LEAST_NANOS ? Possible.UNKNOWN : planner.possible(request.withPatience(Duration.ofNanos(left)));
    }

    /** What the cheapest plan costs, whatever the budget, as far as half of the time that is left allows. */
    KnownCost cost(PlanRequest request) {
        return new CostOracle(planner, nanos, Duration.ofNanos(left() / 2))
                .ask(request, 1)
                .cost();
    }
}
