package batchwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
    default Optional<Plan> best() {
        return plans().stream().findFirst();
    }

    /** The plans found, the best first: where something is wrong with one, the next is there. */
    List<Plan> plans();

    /** What is proven, and how long that took. */
    Proof proof();

    /** Where there is no plan because nothing was found for one of several cooking sessions: that one. */
    default Optional<Stuck> stuck() {
        return Optional.empty();
    }

    /**
     * A cooking session without a plan.
     *
     * @param firstDay the day on which it would cook
     * @param request what was asked for it
     * @param proof how the search for it ended
     */
    record Stuck(int firstDay, PlanRequest request, Proof proof) {}

    /**
     * A plan, proven cheapest.
     *
     * @param others found before it; they cost as much or more
     */
    record Planned(Plan plan, List<Plan> others) implements PlanResult {
        public Planned {
            others = List.copyOf(others);
        }

        public Planned(Plan plan) {
            this(plan, List.of());
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.planned(this);
        }

        @Override
        public List<Plan> plans() {
            return Stream.concat(Stream.of(plan), others.stream()).toList();
        }

        @Override
        public Proof proof() {
            return plan.proof();
        }
    }

    /** No plan keeps every rule: a result, not an exception. */
    record NoPlan(List<Clash> clashes, Proof proof, Optional<Stuck> stuck) implements PlanResult {
        public NoPlan {
            clashes = List.copyOf(clashes);
        }

        public NoPlan(List<Clash> clashes, Proof proof) {
            this(clashes, proof, Optional.empty());
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.noPlan(this);
        }

        @Override
        public List<Plan> plans() {
            return List.of();
        }
    }

    /**
     * Patience ended: the plans found, if any, with how far the best may be from the cheapest.
     *
     * @param overBudget where no plan within the budget was found, the cheapest that keeps every other rule
     */
    record GaveUp(List<Plan> plans, Proof proof, Optional<Stuck> stuck, Optional<Plan> overBudget)
            implements PlanResult {
        public GaveUp {
            plans = List.copyOf(plans);
        }

        public GaveUp(List<Plan> plans, Proof proof, Optional<Stuck> stuck) {
            this(plans, proof, stuck, Optional.empty());
        }

        public GaveUp(List<Plan> plans, Proof proof) {
            this(plans, proof, Optional.empty());
        }

        /** Nothing was found but a plan dearer than the budget, made for the same request without one. */
        public static GaveUp overBudget(Plan plan, Proof proof) {
            return new GaveUp(List.of(), proof, Optional.empty(), Optional.of(plan));
        }

        public GaveUp(Optional<Plan> best, Proof proof) {
            this(best.stream().toList(), proof);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.gaveUp(this);
        }
    }
}
