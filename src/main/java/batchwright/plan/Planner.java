package batchwright.plan;

/** Finds the cheapest plan that keeps every rule. */
public interface Planner {
    PlanResult plan(PlanRequest request);

    /** The same, watched. A planner that reports nothing and cannot be stopped just plans. */
    default PlanResult plan(PlanRequest request, Watch watch) {
        return plan(request);
    }

    /** Whether any plan keeps every rule, whatever it costs within the budget. Quicker than planning. */
    Possible possible(PlanRequest request);

    /** The same; a watch may stop it, and is told nothing. A planner that cannot be stopped just looks. */
    default Possible possible(PlanRequest request, Watch watch) {
        return possible(request);
    }

    /** Answer to "is there any plan?". */
    enum Possible {
        YES,
        NO,
        /** Patience ended first. */
        UNKNOWN
    }
}
