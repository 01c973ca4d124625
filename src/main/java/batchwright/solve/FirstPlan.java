package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.rule.Menu;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A plan soon: of a short list of dishes every pair is judged by its relaxed totals, which are small, and the best pairs are tried with
 * every day alike. Where no pair will do, three dishes are. Proves nothing.
 */
final class FirstPlan {
    /** Sets of dishes for which plans are looked for. */
    private static final int MOST_SETS = 8;

    /** Nodes spent on each of them. */
    private static final long STEPS = 100;

    /** Most work in all: about half a second. */
    private static final long WORK = 2_000_000_000L;

    private final PlanRequest request;
    private final DishSets sets;
    private final Effort effort;
    private final Menu menu;
    private final List<Dish> dishes;
    private final List<Found<DaysSolution>> plans = new ArrayList<>();

    private record Judged(Set<Dish> dishes, double bound) {}

    private FirstPlan(PlanRequest request, DishSets sets, Effort effort) {
        this.request = request;
        this.sets = sets;
        this.effort = effort;
        this.menu = new Menu(request);
        this.dishes = FewDishesFirst.shortlist(request, effort);
    }

    /** Plans of different dishes, the cheapest first. */
    static List<Found<DaysSolution>> plans(PlanRequest request, DishSets sets, Effort effort) {
        var first = new FirstPlan(request, sets, effort.sideOfWork(WORK));
        first.look();
        return first.plans.stream()
                .sorted(Comparator.comparingDouble(Found::cost))
                .toList();
    }

    private void look() {
        List<Set<Dish>> two = larger(larger(List.of(request.mustCook())));
        tryBest(two);
        if (plans.isEmpty()) {
            tryBest(larger(two));
        }
    }

    /** These sets, and each with one more dish of the list. */
    private List<Set<Dish>> larger(List<Set<Dish>> some) {
        Set<Set<Dish>> all = new LinkedHashSet<>(some);
        for (Set<Dish> set : some) {
            for (Dish dish : dishes) {
                Set<Dish> more = new LinkedHashSet<>(set);
                more.add(dish);
                all.add(more);
            }
        }
        return List.copyOf(all);
    }

    private void tryBest(List<Set<Dish>> some) {
        List<Judged> best = some.stream()
                .filter(set -> !set.isEmpty() && set.size() <= request.mostDishes())
                .flatMap(set -> judged(set).stream())
                .sorted(Comparator.comparingDouble(Judged::bound))
                .limit(MOST_SETS)
                .toList();
        for (Judged set : best) {
            if (!effort.requested() && set.bound < cheapest()) {
                sets.heuristic(set.dishes, cheapest(), STEPS).ifPresent(plans::add);
            }
        }
    }

    private Optional<Judged> judged(Set<Dish> set) {
        if (effort.requested()) {
            return Optional.empty();
        }
        TotalsDraft totals = Aim.LEAST_COST.complete(TotalsDraft.cookingAll(request, menu.only(request, set), effort));
        return new RelaxedOptimum(totals.model(), effort)
                .cost().stream().mapToObj(bound -> new Judged(set, bound)).findFirst();
    }

    private double cheapest() {
        return plans.stream().mapToDouble(Found::cost).min().orElse(Double.POSITIVE_INFINITY);
    }
}
