package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.Completion;
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

    /** Sets whose totals are laid out, and nodes spent on the totals of one. */
    private static final int MOST_FROM_TOTALS = 6;

    private static final long STEPS_OF_TOTALS = 300;

    /** Most work in all: about half a second. */
    private static final long WORK = 2_000_000_000L;

    private final PlanRequest request;
    private final DishSets sets;
    private final Effort effort;
    private final Menu menu;
    private final List<Dish> dishes;
    private final List<Found<DaysSolution>> plans = new ArrayList<>();
    /** By their relaxed totals. */
    private List<Judged> best = List.of();

    private record Judged(Set<Dish> dishes, double bound) {}

    private FirstPlan(PlanRequest request, DishSets sets, Effort effort) {
        this.request = request;
        this.sets = sets;
        this.effort = effort;
        this.menu = new Menu(request);
        this.dishes = FewDishesFirst.shortlist(request, effort);
    }

    /** Looks for plans. */
    static FirstPlan of(PlanRequest request, DishSets sets, Effort effort) {
        var first = new FirstPlan(request, sets, effort.sideOfWork(WORK));
        first.look();
        return first;
    }

    /** Plans of different dishes. */
    List<Found<DaysSolution>> plans() {
        return plans;
    }

    /** For the best sets, the cheapest totals that are soon found, laid out day by day: dear plans, but starts unlike the others. */
    List<Found<DaysSolution>> fromTotals(Effort spend) {
        return best.stream()
                .limit(MOST_FROM_TOTALS)
                .filter(set -> !spend.requested())
                .flatMap(set -> fromTotals(set.dishes, spend).stream())
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
        best = some.stream()
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

    private Optional<Found<DaysSolution>> fromTotals(Set<Dish> set, Effort spend) {
        Effort little = spend.limited(STEPS_OF_TOTALS);
        TotalsDraft totals = Aim.LEAST_COST.complete(TotalsDraft.cookingAll(request, menu.only(request, set), little));
        Optional<double[]> cheapest = new SetBound(totals, little).cheapest();
        return cheapest.flatMap(values -> new DayByDay(totals, Aim.LEAST_COST, spend, Depth.THOROUGH)
                .heuristic(
                        new Completion.Point(values, values, values, Double.NEGATIVE_INFINITY, 0),
                        Double.POSITIVE_INFINITY));
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
