package batchwright.plan;

/** Finds the cheapest plan that keeps every rule. */
public interface Planner {
    PlanResult plan(PlanRequest request);

    /** Whether any plan keeps every rule, whatever it costs within the budget. Quicker than planning. */
    Possible possible(PlanRequest request);

    /** Answer to "is there any plan?". */
    enum Possible {
        YES,
        NO,
        /** Patience ended first. */
        UNKNOWN
    }
}
