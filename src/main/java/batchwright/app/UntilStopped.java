package batchwright.app;

import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Watch;
import batchwright.quantity.Money;

/** A planner that is asked nothing more once somebody stops it, besides whoever else looks on. */
record UntilStopped(Planner planner, Watch watch) implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        return planner.plan(request, watch);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch also) {
        return planner.plan(request, new Both(watch, also));
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch also) {
        return watch.stop() ? Possible.UNKNOWN : planner.possible(request, new Both(watch, also));
    }

    /** Either may stop the search; only the second is told of it. */
    private record Both(Watch first, Watch second) implements Watch {
        @Override
        public void found(Money cost) {
            second.found(cost);
        }

        @Override
        public void bound(Money bound) {
            second.bound(bound);
        }

        @Override
        public void wrong(String what) {
            first.wrong(what);
        }

        @Override
        public boolean stop() {
            return first.stop() || second.stop();
        }

        @Override
        public boolean stop(long work) {
            boolean enough = second.stop(work);
            return first.stop(work) || enough;
        }
    }
}
