package batchwright.plan;

import java.util.List;
import java.util.Optional;

/**
 * The answer to a {@link DishRequest}.
 *
 * @param plan one batch and its shopping, no eaters and no days; there when filled, perhaps when not proven
 * @param hints what is possible instead; only when not possible
 */
public record DishAnswer(Status status, Optional<Plan> plan, List<DishHint> hints, Proof proof) {
    /** How the search ended. */
    public enum Status {
        /** Containers as asked, proven cheapest. */
        FILLED,
        /** No container can be as asked, or it is too dear. */
        NOT_POSSIBLE,
        /** Patience ended before the proof; there may be containers. */
        NOT_PROVEN
    }

    public DishAnswer {
        hints = List.copyOf(hints);
    }

    public static DishAnswer filled(Plan plan) {
        return new DishAnswer(Status.FILLED, Optional.of(plan), List.of(), plan.proof());
    }

    public static DishAnswer notPossible(List<DishHint> hints, Proof proof) {
        return new DishAnswer(Status.NOT_POSSIBLE, Optional.empty(), hints, proof);
    }

    public static DishAnswer notProven(Optional<Plan> best, Proof proof) {
        return new DishAnswer(Status.NOT_PROVEN, best, List.of(), proof);
    }
}
