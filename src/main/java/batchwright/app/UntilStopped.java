package batchwright.app;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Watch;

/** A planner that is asked nothing more once somebody stops it. */
record UntilStopped(Planner planner, Watch watch) implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        return planner.plan(request, watch);
    }

    @Override
    public Possible possible(PlanRequest request) {
        return watch.stop() ? Possible.UNKNOWN : planner.possible(request, watch);
    }
}
