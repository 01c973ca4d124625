package batchwright.app.desk;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Watch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Tells how many requests a planner has answered. */
final class Counted implements Planner {
    private final Planner planner;
    private final IntConsumer told;
    private final AtomicInteger answered = new AtomicInteger();

    Counted(Planner planner, IntConsumer told) {
        this.planner = planner;
        this.told = told;
    }

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        PlanResult result = planner.plan(request, watch);
        told.accept(answered.incrementAndGet());
        return result;
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        Possible possible = planner.possible(request, watch);
        told.accept(answered.incrementAndGet());
        return possible;
    }
}
