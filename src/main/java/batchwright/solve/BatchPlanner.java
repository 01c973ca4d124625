package batchwright.solve;

import batchwright.plan.Clash;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
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
        return plan(request, Watch.NONE);
    }

    /** The search never knows the budget: it finds the cheapest plan, and that either fits the budget or tells what would. */
    @Override
    public PlanResult plan(PlanRequest request, Watch watch) {
        long start = System.nanoTime();
        PlanRequest unlimited = request.withBudget(Optional.empty());
        Effort effort = effort(request, watch);
        SearchResult<DaysSolution> result = CheapestPlan.search(unlimited, Aim.LEAST_COST, effort);
        boolean proven = proven(result, effort);
        Optional<Plan> plan = result.best()
                .map(best -> proven ? new TieBreak(best, effort).settle() : best)
                .map(best -> PlanAssembly.of(best, Proof.NONE));
        Proof proof = proof(plan, result, proven, effort, Duration.ofNanos(System.nanoTime() - start));
        Optional<Money> tooDear = request.budget()
                .filter(budget -> plan.isPresent() && proof.cost().compareTo(budget) > 0);
        if (tooDear.isPresent()) {
            return proof.lowerBound().compareTo(tooDear.get()) > 0
                    ? new PlanResult.NoPlan(
                            proven ? List.of(Clash.budget(tooDear.get(), proof.cost())) : List.of(), proof)
                    : new PlanResult.GaveUp(Optional.empty(), proof);
        }
        Optional<Plan> answer = plan.map(p -> p.withProof(proof));
        if (!proven) {
            return new PlanResult.GaveUp(answer, proof);
        }
        return answer.<PlanResult>map(PlanResult.Planned::new).orElseGet(() -> new PlanResult.NoPlan(List.of(), proof));
    }

    @Override
    public Possible possible(PlanRequest request) {
        Effort effort = effort(request, Watch.NONE);
        SearchResult<DaysSolution> result = CheapestPlan.search(request, Aim.ANY_PLAN, effort);
        if (result.best().isPresent()) {
            return Possible.YES;
        }
        return proven(result, effort) ? Possible.NO : Possible.UNKNOWN;
    }

    private static Effort effort(PlanRequest request, Watch watch) {
        long end = System.nanoTime() + request.patience().toNanos();
        return new Effort(() -> System.nanoTime() > end, watch);
    }

    private static boolean proven(SearchResult<?> result, Effort effort) {
        return result.state() == SearchResult.State.DONE && Double.isInfinite(effort.leastLeftOut());
    }

    private static Proof proof(
            Optional<Plan> plan, SearchResult<?> result, boolean proven, Effort effort, Duration took) {
        Money cost = plan.map(Plan::cost).orElse(Money.ZERO);
        double proved = Math.min(result.bound(), effort.leastLeftOut());
        long bound = Double.isFinite(proved) ? Math.max(0, Math.round(proved)) : 0;
        return new Proof(cost, proven && plan.isPresent() ? cost : new Money(bound), effort.nodes(), took);
    }
}
