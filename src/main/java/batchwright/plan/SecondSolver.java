package batchwright.plan;

import java.util.Optional;

/** A solver that is asked again what a planner has answered. */
public interface SecondSolver {
    /**
     * Takes as long as the request's patience.
     *
     * @param plan the planner's best; empty when it says that there is none
     * @param proof what the planner says is proven
     */
    SecondOpinion of(PlanRequest request, Optional<Plan> plan, Proof proof);
}
