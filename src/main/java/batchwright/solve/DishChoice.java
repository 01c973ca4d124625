package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The top of the search: which dishes are cooked. Branches on that alone; for each set of dishes that is worth it, the rest is
 * decided in a small model of these dishes only.
 */
final class DishChoice implements Completion<DaysSolution> {
    private final TotalsDraft draft;
    private final Aim aim;
    private final Effort effort;
    private final Map<Set<Dish>, Settled> settled = new HashMap<>();

    /**
     * What is known of a set of dishes.
     *
     * @param found the cheapest plan below the cutoff of that time, if there was one
     * @param below nothing but {@code found} costs less than this
     */
    private record Settled(Optional<Found<DaysSolution>> found, double below) {}

    private DishChoice(TotalsDraft draft, Aim aim, Effort effort) {
        this.draft = draft;
        this.aim = aim;
        this.effort = effort;
    }

    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort) {
        TotalsDraft draft = aim.complete(TotalsDraft.choosingDishes(request, new Menu(request)));
        var choice = new DishChoice(draft, aim, effort);
        var result = new BranchAndBound<>(draft.model(), choice, Double.POSITIVE_INFINITY, effort::mustStop).search();
        effort.spend(result.nodes());
        return result;
    }

    @Override
    public Verdict<DaysSolution> complete(
            double[] values, double[] lower, double[] upper, double bound, double cutoff) {
        Set<Dish> cooked = new LinkedHashSet<>();
        int free = -1;
        for (Dish dish : draft.menu().dishes()) {
            Column column = draft.cookedColumn(dish);
            if (values[column.index()] > 0.5) {
                cooked.add(dish);
            }
            if (free < 0 && lower[column.index()] < upper[column.index()]) {
                free = column.index();
            }
        }
        Settled known = settled.computeIfAbsent(cooked, dishes -> settle(dishes, cutoff));
        return free < 0 ? Verdict.closed(known.found) : Verdict.split(known.found, free);
    }

    private Settled settle(Set<Dish> dishes, double cutoff) {
        Menu menu = new Menu(draft.request(), dishes);
        TotalsDraft totals = aim.complete(TotalsDraft.cookingAll(draft.request(), menu));
        var result = new BranchAndBound<>(totals.model(), new DayByDay(totals, aim, effort), cutoff, effort::mustStop)
                .search();
        effort.spend(result.nodes());
        if (result.state() == SearchResult.State.STOPPED) {
            effort.leftSomethingOut();
        }
        return new Settled(result.best().map(best -> new Found<>(result.cost(), best)), cutoff);
    }
}
