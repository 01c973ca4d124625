package batchwright.app.desk;

import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.util.List;
import java.util.function.Function;

/**
 * A planner that begins with plans known from before, and ends once it has one that is known to be the cheapest.
 *
 * @param planner of one session, given the plans to begin with
 * @param whole whether this is the whole search, so that a budget that is too low is an answer and no end of patience
 */
record FromMemory(Memory memory, Function<List<Plan>, Planner> planner, boolean whole) implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        return plan(request, Watch.NONE);
    }

    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        Money bound = bound(request);
        PlanResult result = planner.apply(memory.plans(request)).plan(request, new UntilReached(watch, bound));
        return result.proof().lowerBound().compareTo(bound) < 0 ? raised(request, result, bound) : result;
    }

    /** Of the time of a session only the order of work knows: it is not looked at here. */
    private Money bound(PlanRequest request) {
        return request.kitchen().equipment().limits().doneWithinMinutes().isPresent()
                ? Money.ZERO
                : memory.bound(request);
    }

    private PlanResult raised(PlanRequest request, PlanResult result, Money bound) {
        return result.match(new PlanResult.Cases<>() {
            @Override
            public PlanResult planned(PlanResult.Planned planned) {
                return planned;
            }

            @Override
            public PlanResult noPlan(PlanResult.NoPlan none) {
                return none;
            }

            @Override
            public PlanResult gaveUp(PlanResult.GaveUp gaveUp) {
                Proof proof = raised(gaveUp.proof(), bound);
                if (gaveUp.overBudget().isPresent()) {
                    return tooDear(request, gaveUp.overBudget().get(), proof);
                }
                List<Plan> plans = gaveUp.plans().stream()
                        .map(plan -> Plan.of(plan.first().withProof(raised(plan.proof(), bound))))
                        .toList();
                return !plans.isEmpty() && plans.get(0).proof().provenCheapest()
                        ? new PlanResult.Planned(plans.get(0), plans.subList(1, plans.size()))
                        : new PlanResult.GaveUp(plans, proof);
            }
        });
    }

    private PlanResult tooDear(PlanRequest request, Plan plan, Proof proof) {
        Currency currency = request.kitchen().currency();
        return whole && proof.provenCheapest()
                ? new PlanResult.NoPlan(
                        request.budget().stream()
                                .map(budget -> Clash.budget(budget, plan.cost(), currency))
                                .toList(),
                        proof)
                : PlanResult.GaveUp.overBudget(Plan.of(plan.first().withProof(proof)), proof);
    }

    private static Proof raised(Proof proof, Money bound) {
        return new Proof(proof.cost(), bound, proof.nodes(), proof.took(), proof.interrupted(), proof.closeEnough());
    }

    @Override
    public Possible possible(PlanRequest request) {
        return possible(request, Watch.NONE);
    }

    @Override
    public Possible possible(PlanRequest request, Watch watch) {
        return planner.apply(List.of()).possible(request, watch);
    }

    /** Ends the search at a plan that nothing can be cheaper than. */
    private static final class UntilReached implements Watch {
        private final Watch watch;
        private final Money bound;
        private boolean reached;

        UntilReached(Watch watch, Money bound) {
            this.watch = watch;
            this.bound = bound;
        }

        @Override
        public void paidIn(Currency currency) {
            watch.paidIn(currency);
        }

        @Override
        public void found(Money cost) {
            reached |= cost.compareTo(bound) <= 0;
            watch.found(cost);
        }

        @Override
        public void bound(Money proven) {
            watch.bound(proven.compareTo(bound) < 0 ? bound : proven);
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
