package batchwright.plan;

import java.util.Optional;

/**
 * The answer to a {@link SessionsRequest}.
 *
 * @param plan the best found; empty when there is none, none within the budget, or none was found
 * @param proof of the whole
 * @param stuck the session for which nothing was found, if that is why there is no plan
 */
public record SessionsResult(Outcome outcome, Optional<SessionsPlan> plan, Proof proof, Optional<Stuck> stuck) {
    /** How the search ended. */
    public enum Outcome {
        /** A plan, proven cheapest. */
        PLANNED,
        /** No sessions keep every rule. */
        NO_PLAN,
        /** Perhaps a plan, and no proof. */
        NOT_PROVEN
    }

    /** A session without a plan, and how the search for it ended. */
    public record Stuck(int firstDay, PlanRequest request, Proof proof) {}
}
