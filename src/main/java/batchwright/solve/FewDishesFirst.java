package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.rule.Menu;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The same request with few of its dishes, then with more: how a large kitchen is searched first, so that there is soon a plan.
 * Dishes that are cheap together are found as in a tournament: in groups, whose best go on to the next round. A group's best are those
 * that the cheapest relaxed plan of the group cooks, then those that it cooks without these, and so on. Proves nothing.
 */
final class FewDishesFirst {
    /** With this many dishes or fewer, a search needs none before it. */
    private static final int FEW = 30;

    /** Small groups: the work of a relaxation grows with more than the square of its dishes. */
    private static final int GROUP = 8;

    /** A short list is no longer. */
    private static final int SHORT = 12;

    /** Of a group, where one eater judges; with more eaters fewer for each. */
    private static final int BEST_FOR_ONE = 3;

    private static final int FEW_EATERS = 3;
    private static final int MOST_OF_A_GROUP = 5;

    /** No search of its own for so many. */
    private static final int MANY = 100;

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

    /** About a dozen dishes that are cheap together for one eater or another. */
    static List<Dish> shortlist(PlanRequest request, Effort effort) {
        var few = new FewDishesFirst(request, effort);
        List<Dish> dishes = new Menu(request).dishes();
        List<Dish> before = List.of();
        while (dishes.size() > SHORT && !dishes.equals(before)) {
            before = dishes;
            dishes = few.bestOfGroups(dishes);
        }
        return dishes;
    }

    private List<PlanRequest> requests() {
        Deque<List<Dish>> rounds = new ArrayDeque<>();
        List<Dish> dishes = new Menu(request).dishes();
        List<Dish> before = List.of();
        while (dishes.size() > FEW && !dishes.equals(before)) {
            before = dishes;
            dishes = bestOfGroups(dishes);
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

    /** Each group is judged by every eater alone: the relaxation of one is small. */
    private List<Dish> bestOfGroups(List<Dish> dishes) {
        int seats = request.seats().size();
        int each = seats == 1 ? BEST_FOR_ONE : seats <= FEW_EATERS ? 2 : 1;
        Set<Dish> best = new HashSet<>(request.mustCook());
        for (int from = 0; from < dishes.size(); from += GROUP) {
            List<Dish> group = dishes.subList(from, Math.min(from + GROUP, dishes.size()));
            request.seats().stream()
                    .flatMap(seat -> bestOf(group, seat, each).stream())
                    .distinct()
                    .limit(MOST_OF_A_GROUP)
                    .forEach(best::add);
        }
        return dishes.stream().filter(best::contains).toList();
    }

    private List<Dish> bestOf(List<Dish> some, Seat seat, int most) {
        PlanRequest small = with(some).withSeats(List.of(seat));
        var menu = new Menu(small);
        TotalsDraft draft = Aim.LEAST_COST.complete(TotalsDraft.choosingDishes(small, menu, effort));
        var relaxed = new RelaxedOptimum(draft.model(), effort);
        List<Dish> best = new ArrayList<>();
        List<Column> before = new ArrayList<>();
        while (best.size() < most) {
            Optional<double[]> optimum = relaxed.without(before);
            List<Dish> cooked = menu.dishes().stream()
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
        return best;
    }
}
