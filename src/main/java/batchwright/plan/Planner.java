package batchwright.plan;

/** Finds the cheapest plan that keeps every rule. */
public interface Planner {
    PlanResult plan(PlanRequest request);
}
