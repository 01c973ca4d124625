package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.left.LeftDish;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * The least checkout cost of any plan, by going through all of them: for each eater every way to fill containers and to lay
 * them and snacks over the days ({@link EveryMenu}), for every pair of eaters' menus every way to buy ({@link EveryPurchase}).
 * Counts in whole numbers only. Written from the rules as the documents state them; shares no code with the planner or the
 * audit. One cut is made: of two menus with the same containers, one that uses no less of any food than the other cannot be
 * cheaper and is dropped.
 */
public final class BruteForce {
    /**
     * Amounts used are a list twice as long as that of foods: of each food everything that is eaten; then, of each food of which
     * something at home spoils before the last day, what is eaten besides containers.
     */
    static boolean spoils(Kitchen kitchen, int days, Food food) {
        LocalDate first = kitchen.cookingDay();
        return kitchen.lotsOf(food).stream()
                .flatMap(lot -> lot.useBy().stream())
                .anyMatch(day -> !day.isBefore(first) && day.isBefore(first.plusDays(days - 1)));
    }

    /** Edible grams and nutrient amounts are counted in this many parts of a unit, so that all are whole numbers. */
    static final long PARTS = 60_000;

    private static final int LEAST_IN_A_BATCH = 2;

    private final PlanRequest request;
    private final List<Food> foods;
    private final List<Dish> dishes;
    private final EveryPurchase purchase;
    private long least = EveryPurchase.IMPOSSIBLE;

    private BruteForce(PlanRequest request) {
        this.request = request;
        this.foods = List.copyOf(request.kitchen().foods().values());
        this.dishes = List.copyOf(request.kitchen().dishes().values());
        this.purchase = new EveryPurchase(request.kitchen(), foods, request.days());
    }

    /** Least cost [minor units]; empty when no plan keeps every rule. */
    public static OptionalLong leastCost(PlanRequest request) {
        return new BruteForce(request).search();
    }

    private OptionalLong search() {
        List<List<EveryMenu.Menu>> menus = new ArrayList<>();
        for (Seat seat : request.seats()) {
            menus.add(new EveryMenu(request, seat, foods, dishes).menus());
        }
        combine(menus, 0, new int[dishes.size()], new long[2 * foods.size()]);
        boolean none = least == EveryPurchase.IMPOSSIBLE
                || (request.budget().isPresent()
                        && least > request.budget().get().minor());
        return none ? OptionalLong.empty() : OptionalLong.of(least);
    }

    private void combine(List<List<EveryMenu.Menu>> menus, int seat, int[] containers, long[] used) {
        if (seat == menus.size()) {
            if (batchesAreRight(containers)) {
                least = Math.min(least, purchase.leastCost(used));
            }
            return;
        }
        for (EveryMenu.Menu menu : menus.get(seat)) {
            int[] more = containers.clone();
            for (int d = 0; d < more.length; d++) {
                more[d] += menu.containers()[d];
            }
            long[] moreUsed = used.clone();
            for (int f = 0; f < moreUsed.length; f++) {
                moreUsed[f] += menu.used()[f];
            }
            combine(menus, seat + 1, more, moreUsed);
        }
    }

    private boolean batchesAreRight(int[] containers) {
        int cooked = 0;
        List<LeftDish> left = request.left().dishes();
        int fromBefore = 0;
        int leastInABatch = left.isEmpty() ? LEAST_IN_A_BATCH : 1;
        for (int count : containers) {
            if (count > 0) {
                cooked++;
                if (count < leastInABatch) {
                    return false;
                }
            }
        }
        for (LeftDish each : left) {
            int eaten = containers[dishes.indexOf(each.dish())];
            fromBefore += eaten > 0 ? 1 : 0;
            boolean offered = !each.others().isEmpty();
            if (offered ? eaten > each.containers() : eaten != each.containers()) {
                return false;
            }
        }
        if (cooked - fromBefore > request.mostDishes() - left.size()) {
            return false;
        }
        long again = request.variety().lastTime().stream()
                .filter(dish -> containers[dishes.indexOf(dish)] > 0)
                .count();
        return again <= 1
                && cooked >= request.variety().leastDishes()
                && cooked <= request.mostDishes()
                && request.mustCook().stream().allMatch(dish -> containers[dishes.indexOf(dish)] > 0);
    }
}
