package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.Stop;
import batchwright.solve.rule.Menu;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The searches over sets of dishes that were begun. Whoever comes to the same set again goes on with the same search. */
final class DishSets {
    /** Nodes of the heuristic for a set. */
    private static final long HEURISTIC_STEPS = 500;

    private final PlanRequest request;
    private final Aim aim;
    private final Effort effort;
    private final Menu whole;
    private final Map<Set<Dish>, DishSetSearch> begun = new HashMap<>();

    DishSets(PlanRequest request, Aim aim, Effort effort) {
        this.request = request;
        this.aim = aim;
        this.effort = effort;
        this.whole = new Menu(request);
    }

    DishSetSearch search(Set<Dish> dishes) {
        return begun.computeIfAbsent(
                dishes,
                set -> new DishSetSearch(
                        stop -> totals(whole.only(request, set), stop),
                        request.seats().size() > 1,
                        aim,
                        effort));
    }

    private TotalsDraft totals(Menu menu, Stop stop) {
        return aim.complete(TotalsDraft.cookingAll(request, menu, stop));
    }

    /** Another search over sets begins, whose clock starts at 0: no set has to wait. */
    void restartClock() {
        begun.values().forEach(DishSetSearch::restartClock);
    }

    /** A heuristic: a plan with these dishes and the same containers on every day, if one is soon found. */
    Optional<Found<DaysSolution>> heuristic(Set<Dish> dishes, double cutoff) {
        return heuristic(dishes, cutoff, HEURISTIC_STEPS);
    }

    /** The same with at most so many nodes. */
    Optional<Found<DaysSolution>> heuristic(Set<Dish> dishes, double cutoff, long steps) {
        var menu = whole.only(request, dishes);
        Effort little = effort.limited(steps);
        TotalsDraft totals = aim.complete(TotalsDraft.everyDayAlike(request, menu, little));
        var dayByDay = new DayByDay(totals, aim, little, Depth.EVERY_DAY_ALIKE);
        var result = new BranchAndBound<>(totals.model(), dayByDay, cutoff, little).search();
        effort.count(result);
        result.found().ifPresent(found -> effort.found(found));
        return result.found();
    }
}
