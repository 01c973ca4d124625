package batchwright.explain;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;

/** Asks what changed requests cost, until a moment after which nothing more becomes known. Budgets are ignored. */
public final class CostOracle {
    /** Asking for less than this is not worth it. */
    private static final long LEAST_NANOS = 20_000_000;

    private static final int PER_CENT = 100;

    private final Planner planner;
    private final LongSupplier nanos;
    private final long end;

    /** @param plan the plan that was found, if any */
    public record Answer(KnownCost cost, Optional<Plan> plan) {
        private static final Answer NOTHING = new Answer(KnownCost.NOTHING, Optional.empty());
    }

    /**
     * @param nanos a clock [ns]
     * @param all for all questions together, from now
     */
    public CostOracle(Planner planner, LongSupplier nanos, Duration all) {
        this.planner = planner;
        this.nanos = nanos;
        this.end = nanos.getAsLong() + all.toNanos();
    }

    /** The same for a part of the time that is left. */
    public CostOracle forPerCent(int percent) {
        return new CostOracle(planner, nanos, Duration.ofNanos(left() * percent / PER_CENT));
    }

    boolean isOver() {
        return left() < LEAST_NANOS;
    }

    private long left() {
        return Math.max(0, end - nanos.getAsLong());
    }

    /** @param shares how many questions are still to share the time that is left, this one counted */
    public Answer ask(PlanRequest request, int shares) {
        if (isOver()) {
            return Answer.NOTHING;
        }
        long patience = Math.max(LEAST_NANOS, left() / Math.max(1, shares));
        PlanRequest asked = request.withBudget(Optional.empty()).withPatience(Duration.ofNanos(patience));
        return answer(asked, planner.plan(asked));
    }

    /** What the result for a request without a budget tells. */
    static Answer answer(PlanRequest asked, PlanResult result) {
        return result.match(new PlanResult.Cases<>() {
            @Override
            public Answer planned(PlanResult.Planned planned) {
                Plan plan = planned.plan();
                AuditReport report = Audit.of(asked, plan);
                if (!report.passed()) {
                    throw new IllegalStateException("plan of a changed request failed its audit: "
                            + report.checks().stream().filter(c -> !c.passed()).toList());
                }
                return new Answer(KnownCost.exactly(plan.cost()), Optional.of(plan));
            }

            @Override
            public Answer noPlan(PlanResult.NoPlan none) {
                return new Answer(KnownCost.NO_PLAN, Optional.empty());
            }

            /** A search that is cut off very early may leave a pack in the basket that is not needed: no plan to build on. */
            @Override
            public Answer gaveUp(PlanResult.GaveUp gaveUp) {
                var bound = new KnownCost(gaveUp.proof().lowerBound(), Optional.empty(), false);
                Optional<Plan> best =
                        gaveUp.best().filter(plan -> Audit.of(asked, plan).passed());
                return new Answer(best.map(plan -> bound.notAbove(plan.cost())).orElse(bound), best);
            }
        });
    }
}
