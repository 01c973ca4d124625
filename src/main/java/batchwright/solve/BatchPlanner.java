package batchwright.solve;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import batchwright.quantity.Money;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Budget;
import batchwright.solve.rule.Menu;
import batchwright.solve.rule.Rule;
import batchwright.solve.rule.Rules;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Finds the cheapest plan and proves it: branches over the totals, whose optimum is a lower bound for every plan, and lays
 * out over days what it finds.
 */
public final class BatchPlanner implements Planner {
    @Override
    public PlanResult plan(PlanRequest request) {
        long start = System.nanoTime();
        long end = start + request.patience().toNanos();
        BooleanSupplier stop = () -> System.nanoTime() > end;
        var search = new Search(request, false, stop);
        SearchResult<DaysSolution> result = search.run();
        long nodes = result.nodes() + search.dayByDay.nodes();
        Optional<Plan> plan = result.best().map(best -> {
            DaysSolution tidy = new TieBreak(best, stop).settle();
            return PlanAssembly.of(tidy, Proof.NONE);
        });
        boolean done = result.state() == SearchResult.State.DONE && search.dayByDay.complete();
        Proof proof = proof(plan, result, nodes, Duration.ofNanos(System.nanoTime() - start));
        if (!done) {
            return new PlanResult.GaveUp(plan.map(p -> p.withProof(proof)), proof);
        }
        return plan.<PlanResult>map(p -> new PlanResult.Planned(p.withProof(proof)))
                .orElseGet(() -> new PlanResult.NoPlan(List.of(), proof));
    }

    @Override
    public Possible possible(PlanRequest request) {
        long end = System.nanoTime() + request.patience().toNanos();
        BooleanSupplier stop = () -> System.nanoTime() > end;
        var search = new Search(request, true, stop);
        SearchResult<DaysSolution> result = search.run();
        if (result.best().isPresent()) {
            return Possible.YES;
        }
        return result.state() == SearchResult.State.DONE && search.dayByDay.complete() ? Possible.NO : Possible.UNKNOWN;
    }

    private static Proof proof(Optional<Plan> plan, SearchResult<?> result, long nodes, Duration took) {
        long bound = Double.isFinite(result.bound()) ? Math.max(0, Math.round(result.bound())) : 0;
        long cost = plan.map(p -> p.cost().minor()).orElse(0L);
        return new Proof(new Money(cost), new Money(bound), nodes, took);
    }

    /** One run of the search. */
    private static final class Search {
        private final DayByDay dayByDay;
        private final BranchAndBound<DaysSolution> search;

        Search(PlanRequest request, boolean anyCost, BooleanSupplier stop) {
            var totals = new TotalsDraft(request, new Menu(request));
            for (Rule rule : Rules.ALL) {
                rule.addTo(totals);
            }
            totals.model().minimise(anyCost ? new Expression() : Budget.cost(totals), 1);
            dayByDay = new DayByDay(totals, anyCost, stop);
            search = new BranchAndBound<>(totals.model(), dayByDay, Double.POSITIVE_INFINITY, stop);
        }

        SearchResult<DaysSolution> run() {
            return search.search();
        }
    }
}
