package batchwright.solve;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.quantity.Money;
import batchwright.solve.mip.SearchResult;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Finds the cheapest plan and proves it, in four nested steps, each exact: which dishes ({@link DishChoice}); how many
 * containers, packs and snacks over all days ({@link TotalsDraft}), whose optimum is a lower bound for every plan; the grams in
 * each container for a layout of containers over days ({@link DayByDay}); and which snacks on which day ({@link DealOut}).
 */
public final class BatchPlanner implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        long start = System.nanoTime();
        Effort effort = effort(request);
        SearchResult<DaysSolution> result = DishChoice.search(request, Aim.LEAST_COST, effort);
        boolean proven = proven(result, effort);
        Optional<Plan> plan = result.best()
                .map(best -> new TieBreak(best, effort).settle())
                .map(best -> PlanAssembly.of(best, Proof.NONE));
        Proof proof = proof(plan, result, effort, Duration.ofNanos(System.nanoTime() - start));
        if (!proven) {
            return new PlanResult.GaveUp(plan.map(p -> p.withProof(proof)), proof);
        }
        return plan.<PlanResult>map(p -> new PlanResult.Planned(p.withProof(proof)))
                .orElseGet(() -> new PlanResult.NoPlan(List.of(), proof));
    }

    @Override
    public Possible possible(PlanRequest request) {
        Effort effort = effort(request);
        SearchResult<DaysSolution> result = DishChoice.search(request, Aim.ANY_PLAN, effort);
        if (result.best().isPresent()) {
            return Possible.YES;
        }
        return proven(result, effort) ? Possible.NO : Possible.UNKNOWN;
    }

    private static Effort effort(PlanRequest request) {
        long end = System.nanoTime() + request.patience().toNanos();
        return new Effort(() -> System.nanoTime() > end);
    }

    private static boolean proven(SearchResult<?> result, Effort effort) {
        return result.state() == SearchResult.State.DONE && effort.everythingSeen();
    }

    private static Proof proof(Optional<Plan> plan, SearchResult<?> result, Effort effort, Duration took) {
        long bound = Double.isFinite(result.bound()) ? Math.max(0, Math.round(result.bound())) : 0;
        long cost = plan.map(p -> p.cost().minor()).orElse(0L);
        return new Proof(new Money(cost), new Money(bound), effort.nodes(), took);
    }
}
