package batchwright.app.desk;

import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plans one session with what a desk remembers: a plan that keeps the rules and that, as is proven, nothing undercuts is the answer at
 * once; else only cheaper ones are looked for.
 *
 * @param whole whether to look to the end; if not, only near the newest plan, and a budget that is too low is the end of patience
 */
record FromMemory(Memory memory, boolean whole) implements Planner {
    /** Most work for a quick answer. */
    private static final long QUICK_WORK = 30_000_000;

    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        PlanRequest unlimited = request.withBudget(Optional.empty());
        Money bound = bound(unlimited);
        Optional<Plan> kept = memory.kept(unlimited);
        kept.ifPresent(plan -> watch.found(plan.cost()));
        watch.bound(bound);
        if (kept.filter(plan -> plan.cost().compareTo(bound) <= 0).isPresent()) {
            return result(request, kept.stream().toList(), raised(Proof.NONE, bound));
        }
        // Of plans that cost the same, the one that was shown before stays: no figure on the desk moves for nothing.
        PlanResult looked = looked(unlimited, kept.map(Plan::cost), new NoLower(watch, bound));
        List<Plan> plans = Stream.concat(kept.stream(), looked.plans().stream())
                .sorted(Comparator.comparing(Plan::cost))
                .toList();
        // Plans that are dearer than the one to beat may have been found on the way: they prove nothing of it.
        Proof proof = raised(
                plans.isEmpty()
                        ? looked.proof()
                        : capped(looked.proof(), plans.get(0).cost()),
                bound);
        boolean none = looked instanceof PlanResult.NoPlan && plans.isEmpty();
        return none ? looked : result(request, plans, proof);
    }

    private PlanResult looked(PlanRequest request, Optional<Money> below, Watch watch) {
        if (whole) {
            return below.map(BatchPlanner::below).orElseGet(BatchPlanner::new).plan(request, watch);
        }
        return memory.newest(request)
                .map(known -> BatchPlanner.near(known, below, memory.dishes(), QUICK_WORK)
                        .plan(request, watch))
                .orElse(new PlanResult.GaveUp(List.of(), Proof.NONE));
    }

    /** Of the time of a session only the order of work knows: it is not looked at here. */
    private Money bound(PlanRequest request) {
        return request.kitchen().equipment().limits().doneWithinMinutes().isPresent()
                ? Money.ZERO
                : memory.bound(request);
    }

    /** @param plans the cheapest first, made without a budget */
    private PlanResult result(PlanRequest request, List<Plan> plans, Proof proof) {
        if (plans.isEmpty()) {
            return new PlanResult.GaveUp(plans, proof);
        }
        Proof best = proof.of(plans.get(0).cost());
        Optional<Money> tooLow = request.budget().filter(budget -> best.cost().compareTo(budget) > 0);
        if (tooLow.isPresent()) {
            return tooDear(request, tooLow.get(), plans.get(0), best);
        }
        List<Plan> asked = plans.stream()
                .filter(plan -> request.budget()
                        .filter(budget -> plan.cost().compareTo(budget) > 0)
                        .isEmpty())
                .map(plan -> Plan.of(plan.first().withRequest(request).withProof(proof.of(plan.cost()))))
                .toList();
        return best.provenCheapest()
                ? new PlanResult.Planned(asked.get(0), asked.subList(1, asked.size()))
                : new PlanResult.GaveUp(asked, best);
    }

    private PlanResult tooDear(PlanRequest request, Money budget, Plan plan, Proof proof) {
        if (!whole || proof.lowerBound().compareTo(budget) <= 0) {
            return PlanResult.GaveUp.overBudget(Plan.of(plan.first().withProof(proof)), proof);
        }
        return new PlanResult.NoPlan(
                proof.provenCheapest()
                        ? List.of(Clash.budget(
                                budget, plan.cost(), request.kitchen().currency()))
                        : List.of(),
                proof);
    }

    private static Proof capped(Proof proof, Money most) {
        return proof.lowerBound().compareTo(most) <= 0
                ? proof
                : new Proof(proof.cost(), most, proof.nodes(), proof.took(), proof.interrupted(), proof.closeEnough());
    }

    private static Proof raised(Proof proof, Money bound) {
        return proof.lowerBound().compareTo(bound) >= 0
                ? proof
                : new Proof(proof.cost(), bound, proof.nodes(), proof.took(), proof.interrupted(), proof.closeEnough());
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        return new BatchPlanner().possible(request, watch);
    }

    /** Ends a search at a plan that nothing can be cheaper than, as was proven before. */
    private static final class NoLower implements Watch {
        private final Watch watch;
        private final Money known;
        private boolean reached;

        NoLower(Watch watch, Money known) {
            this.watch = watch;
            this.known = known;
        }

        @Override
        public void found(Money cost) {
            reached |= cost.compareTo(known) <= 0;
            watch.found(cost);
        }

        @Override
        public void bound(Money proven) {
            watch.bound(proven.compareTo(known) < 0 ? known : proven);
        }

        @Override
        public void wrong(String what) {
            watch.wrong(what);
        }

        @Override
        public boolean stop() {
            return reached || watch.stop();
        }

        @Override
        public boolean stop(long work) {
            return reached || watch.stop(work);
        }
    }
}
