package batchwright.explain;

import java.util.Optional;

/** What was asked for beside a plan. */
public record Insight(Optional<Why> why, Optional<Frontier> frontier) {
    public static final Insight NONE = new Insight(Optional.empty(), Optional.empty());
}
