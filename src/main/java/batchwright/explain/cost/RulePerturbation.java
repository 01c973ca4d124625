package batchwright.explain.cost;

import java.util.Optional;

/**
 * A rule that a plan keeps, with what it becomes when loosened a little and when tightened a little.
 *
 * @param rule its name for people, with the unit
 * @param eater whose rule it is; empty when it is everybody's
 * @param now its figure
 * @param looser empty when it cannot be loosened so
 * @param tighter empty when it cannot be tightened so
 */
public record RulePerturbation(
        String rule, Optional<String> eater, String now, Optional<Change> looser, Optional<Change> tighter) {}
