package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A good plan soon, near one that is known: first its containers on its days filled anew; then its dishes on other days or, for several
 * eaters, one eater after another; at last, when that is not enough, other dishes besides. Proves nothing.
 */
final class NearPlan {
    /** Nodes spent on filling the containers anew. */
    private static final long LAYOUT_STEPS = 300;

    /** Most work on filling the containers anew. */
    private static final long LAYOUT_WORK = 8_000_000;

    /** Most work on the same dishes. */
    private static final long SAME_DISHES_WORK = 12_000_000;

    private final PlanRequest request;
    private final Session known;
    private final Effort effort;
    private final double below;
    private Optional<Found<DaysSolution>> best = Optional.empty();

    /** @param below only plans that cost less are looked for [cents] */
    NearPlan(PlanRequest request, Session known, Effort effort, double below) {
        this.request = request;
        this.known = known;
        this.effort = effort;
        this.below = below;
    }

    /**
     * A plan, if one is found before the effort ends.
     *
     * @param others dishes that may come in when those of the known plan will not do
     */
    SearchResult<DaysSolution> search(Set<Dish> others) {
        PlanRequest same = withDishes(Set.of());
        take(filledAnew(same));
        take(best.isPresent() && request.seats().size() > 1 ? improved(same) : cheapest(same, SAME_DISHES_WORK));
        if (best.isEmpty() && Double.isInfinite(below)) {
            take(cheapest(withDishes(others), Long.MAX_VALUE / 2));
        }
        return new SearchResult<>(
                SearchResult.State.STOPPED,
                best.map(Found::solution),
                best.map(Found::cost).orElse(Double.POSITIVE_INFINITY),
                Double.NEGATIVE_INFINITY,
                effort.nodes());
    }

    private void take(Optional<Found<DaysSolution>> found) {
        found.filter(plan -> plan.cost() < cutoff()).ifPresent(plan -> {
            effort.found(plan);
            best = found;
        });
    }

    private double cutoff() {
        return best.map(Found::cost).orElse(below);
    }

    private Optional<Found<DaysSolution>> filledAnew(PlanRequest same) {
        Effort little = effort.sideOfWork(LAYOUT_WORK).limited(LAYOUT_STEPS);
        var menu = new Menu(same);
        var models = new LayoutModels(same, menu, Aim.LEAST_COST, Depth.THOROUGH, little);
        try {
            return new KnownLayout(same, menu, known)
                    .fitted()
                    .flatMap(layout -> new LayoutSearch(layout, models, little).heuristic(cutoff()));
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    private Optional<Found<DaysSolution>> cheapest(PlanRequest asked, long work) {
        return CheapestPlan.search(asked, Aim.LEAST_COST, effort.sideOfWork(work), cutoff())
                .found();
    }

    private Optional<Found<DaysSolution>> improved(PlanRequest same) {
        try {
            return best.map(plan ->
                    Improvement.of(same, Aim.LEAST_COST, effort.sideOfWork(SAME_DISHES_WORK), plan, Improvement.QUICK));
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    /** The request with the dishes of the known plan that are still offered, with those that must be cooked and with others. */
    private PlanRequest withDishes(Set<Dish> others) {
        Kitchen kitchen = request.kitchen();
        Set<Dish> wanted = new LinkedHashSet<>(others);
        wanted.addAll(request.mustCook());
        known.batches().forEach(batch -> wanted.add(batch.dish()));
        Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
        dishes.values().removeIf(dish -> !wanted.contains(dish));
        return request.withKitchen(kitchen.withDishes(dishes));
    }
}
