package batchwright.plan;

import java.util.List;
import java.util.Optional;

/** The answer of a planner. */
public sealed interface PlanResult {
    /** One result for each outcome. */
    interface Cases<R> {
        R planned(Planned planned);

        R noPlan(NoPlan noPlan);

        R gaveUp(GaveUp gaveUp);
    }

    <R> R match(Cases<R> cases);

    /** A plan, proven cheapest. */
    record Planned(Plan plan) implements PlanResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.planned(this);
        }
    }

    /** No plan keeps every rule: a result, not an exception. */
    record NoPlan(List<Clash> clashes, Proof proof) implements PlanResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noPlan(this);
        }
    }

    /** Patience ended: the best plan found, if any, with how far it may be from the cheapest. */
    record GaveUp(Optional<Plan> best, Proof proof) implements PlanResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaveUp(this);
        }
    }
}
