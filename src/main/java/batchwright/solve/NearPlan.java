package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.OutOfTime;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A good plan soon, near one that is known: first the known plans as they are, then its containers on its days filled anew, then its
 * dishes on other days. Proves nothing.
 */
final class NearPlan {
    /** Nodes spent on filling the containers anew. */
    private static final long LAYOUT_STEPS = 300;

    /** Most work on filling the containers anew. */
    private static final long LAYOUT_WORK = 10_000_000;

    /** Most work on other days for the same dishes. */
    private static final long KEPT_WORK = 20_000_000;

    private final PlanRequest request;
    private final List<Plan> known;
    private final Effort effort;
    private Optional<Found<DaysSolution>> best = Optional.empty();

    private NearPlan(PlanRequest request, List<Plan> known, Effort effort) {
        this.request = request;
        this.known = known;
        this.effort = effort;
    }

    /**
     * A plan, if one is found before the effort ends.
     *
     * @param known plans of one session or several; the first is the one to stay near to
     */
    static SearchResult<DaysSolution> search(PlanRequest request, List<Plan> known, Effort effort) {
        var near = new NearPlan(request, known, effort);
        near.look();
        return new SearchResult<>(
                SearchResult.State.STOPPED,
                near.best.map(Found::solution),
                near.best.map(Found::cost).orElse(Double.POSITIVE_INFINITY),
                Double.NEGATIVE_INFINITY,
                effort.nodes());
    }

    private void look() {
        best = new KnownPlans(request, effort).cheapest(known);
        known.stream().findFirst().filter(Plan::isCookedOnce).map(Plan::first).ifPresent(session -> {
            take(filledAnew(session));
            take(CheapestPlan.search(
                            request.withKitchen(withDishesOf(session)),
                            Aim.LEAST_COST,
                            effort.sideOfWork(KEPT_WORK),
                            best)
                    .found());
        });
    }

    private void take(Optional<Found<DaysSolution>> found) {
        found.filter(plan -> plan.cost() < cutoff()).ifPresent(plan -> {
            effort.found(plan);
            best = found;
        });
    }

    private double cutoff() {
        return best.map(Found::cost).orElse(Double.POSITIVE_INFINITY);
    }

    private Optional<Found<DaysSolution>> filledAnew(Session session) {
        Effort little = effort.sideOfWork(LAYOUT_WORK).limited(LAYOUT_STEPS);
        var menu = new Menu(request.withKitchen(withDishesOf(session)));
        var models = new LayoutModels(request, menu, Aim.LEAST_COST, Depth.THOROUGH, little);
        try {
            return new KnownLayout(request, menu, session)
                    .fitted()
                    .flatMap(layout -> new LayoutSearch(layout, models, little).heuristic(cutoff()));
        } catch (OutOfTime over) {
            return Optional.empty();
        }
    }

    /** With the dishes of a session that are still offered, and those that must be cooked. */
    private Kitchen withDishesOf(Session session) {
        Map<String, Dish> dishes = new LinkedHashMap<>(request.kitchen().dishes());
        dishes.values()
                .removeIf(dish -> !request.mustCook().contains(dish)
                        && session.batches().stream()
                                .noneMatch(batch -> batch.dish().equals(dish)));
        return request.kitchen().withDishes(dishes);
    }
}
