package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.rule.Menu;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The same request with few of its dishes, then with more: how a large kitchen is searched first, so that there is soon a plan.
 * Dishes that are cheap together are found as in a tournament: in groups, whose best go on to the next round. A group's best are those
 * that the cheapest relaxed plan of the group cooks, then those that it cooks without these, and so on. Proves nothing.
 */
final class FewDishesFirst {
    /** With this many dishes or fewer, a search needs none before it. */
    private static final int FEW = 30;

    private static final int GROUP = 24;
    /** In a kitchen of so many dishes a group's best are fewer, so that there are not too many groups in the next round. */
    private static final int MANY = 100;

    private static final int BEST_OF_A_GROUP = 12;
    private static final int BEST_AMONG_MANY = 8;
    private static final double COOKED = 1e-6;

    private final PlanRequest request;
    private final Effort effort;

    private FewDishesFirst(PlanRequest request, Effort effort) {
        this.request = request;
        this.effort = effort;
    }

    /** Requests with fewer dishes, each with all those of the one before; none where there are few anyway. */
    static List<PlanRequest> of(PlanRequest request, Effort effort) {
        return new FewDishesFirst(request, effort).requests();
    }

    private List<PlanRequest> requests() {
        Deque<List<Dish>> rounds = new ArrayDeque<>();
        List<Dish> dishes = new Menu(request).dishes();
        while (dishes.size() > FEW) {
            dishes = bestOfGroups(dishes, dishes.size() > MANY ? BEST_AMONG_MANY : BEST_OF_A_GROUP);
            rounds.addFirst(dishes);
        }
        // Rounds with hardly more dishes, or with very many, are not worth a search of their own.
        return rounds.stream()
                .filter(round -> round == rounds.getFirst()
                        || (round.size() >= 2 * rounds.getFirst().size() && round.size() <= MANY))
                .map(this::with)
                .toList();
    }

    private PlanRequest with(List<Dish> dishes) {
        Map<String, Dish> byId = new LinkedHashMap<>();
        dishes.forEach(dish -> byId.put(dish.id(), dish));
        return request.withKitchen(request.kitchen().withDishes(byId));
    }

    private List<Dish> bestOfGroups(List<Dish> dishes, int most) {
        List<Dish> best = new ArrayList<>();
        for (int from = 0; from < dishes.size(); from += GROUP) {
            best.addAll(bestOf(dishes.subList(from, Math.min(from + GROUP, dishes.size())), most));
        }
        return best;
    }

    private List<Dish> bestOf(List<Dish> group, int most) {
        PlanRequest small = with(group);
        TotalsDraft draft = Aim.LEAST_COST.complete(TotalsDraft.choosingDishes(small, new Menu(small), effort));
        var relaxed = new RelaxedOptimum(draft.model(), effort);
        List<Dish> best = new ArrayList<>();
        List<Column> before = new ArrayList<>();
        while (best.size() < most) {
            Optional<double[]> optimum = relaxed.without(before);
            List<Dish> cooked = group.stream()
                    .filter(dish -> !best.contains(dish))
                    .filter(dish -> optimum.isEmpty()
                            || optimum.get()[draft.cookedColumn(dish).index()] > COOKED)
                    .limit(most - best.size())
                    .toList();
            if (cooked.isEmpty()) {
                break;
            }
            best.addAll(cooked);
            cooked.forEach(dish -> before.add(draft.cookedColumn(dish)));
        }
        return group.stream()
                .filter(dish -> best.contains(dish) || request.mustCook().contains(dish))
                .toList();
    }
}
