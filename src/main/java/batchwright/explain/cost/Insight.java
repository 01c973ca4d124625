package batchwright.explain.cost;

import batchwright.plan.SecondOpinion;
import java.util.Optional;

/** What was asked for beside a plan. */
public record Insight(Optional<Why> why, Optional<Frontier> frontier, Optional<SecondOpinion> secondOpinion) {
    public static final Insight NONE = new Insight(Optional.empty(), Optional.empty(), Optional.empty());
}
