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

    /** The best plan found, proven or not. */
    Optional<Plan> best();

    /** What is proven, and how long that took. */
    Proof proof();

    /** A plan, proven cheapest. */
    record Planned(Plan plan) implements PlanResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.planned(this);
        }

        @Override
        public Optional<Plan> best() {
            return Optional.of(plan);
        }

        @Override
        public Proof proof() {
            return plan.proof();
        }
    }

    /** No plan keeps every rule: a result, not an exception. */
    record NoPlan(List<Clash> clashes, Proof proof) implements PlanResult {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noPlan(this);
        }

        @Override
        public Optional<Plan> best() {
            return Optional.empty();
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
