package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.Expression;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is used of a food, and room to spare, is at home or in the packs bought. One row for each food: grams as purchased.
 *
 * <p>Three things make the relaxation tighter without changing any whole-numbered plan: a pack counts for no more than can be
 * used at all; each user of a food alone needs packs; a dish that cannot be cooked from the pantry needs a pack of each
 * ingredient it always has.
 */
public record StockRule() implements Rule {
    @Override
    public void addTo(Draft draft) {
        Set<Food> foods = new LinkedHashSet<>();
        draft.menu().dishes().forEach(d -> foods.addAll(draft.menu().foods(d)));
        for (Seat seat : draft.request().seats()) {
            draft.menu().snacks(seat).forEach(m -> foods.add(m.food()));
            seat.eater().wishes().always().forEach(a -> foods.add(a.measure().food()));
        }
        foods.forEach(food -> add(draft, food));
    }

    private static void add(Draft draft, Food food) {
        double always = Amounts.usedAlways(draft, food);
        List<Expression> users = users(draft, food);
        var used = Expression.of(always);
        users.forEach(user -> used.plus(user, 1));
        double most = Math.min(used.most(), always + mostOnAnyMenu(draft, food));
        cover(draft, "stock." + food.id(), food, used, most);
        if (users.size() > 1) {
            for (int u = 0; u < users.size(); u++) {
                Expression user = users.get(u);
                cover(draft, "stock." + food.id() + ".user" + u, food, user, user.most());
            }
        }
        needsPack(draft, food);
    }

    /** No plan needs more of a food [grams as purchased]. */
    public static double mostUsed(Draft draft, Food food) {
        var used = Expression.of(Amounts.usedAlways(draft, food));
        users(draft, food).forEach(user -> used.plus(user, 1));
        return Math.min(used.most(), used.constant() + mostOnAnyMenu(draft, food));
    }

    private static void cover(Draft draft, String row, Food food, Expression used, double most) {
        cover(
                draft,
                row,
                food,
                used,
                most,
                draft.request().kitchen().pantryGrams(food).doubleValue());
    }

    /** used <= pantry + packs, where a pack counts for no more than can be missing. */
    static void cover(Draft draft, String row, Food food, Expression used, double most, double pantry) {
        double missing = most - pantry;
        if (missing <= 0) {
            return;
        }
        var balance = new Expression().plus(used, 1);
        for (Pack pack : draft.request().kitchen().packsOf(food)) {
            balance.plus(draft.packs(pack), -Math.min(pack.grams().doubleValue(), missing));
        }
        draft.model().atMost(row, balance, pantry);
    }

    private static List<Expression> users(Draft draft, Food food) {
        List<Expression> users = new ArrayList<>();
        for (Dish dish : draft.menu().dishes()) {
            if (draft.menu().foods(dish).contains(food)) {
                users.add(Amounts.atHandFor(draft, dish, food));
            }
        }
        for (Seat seat : draft.request().seats()) {
            if (draft.menu().snacks(seat).stream().anyMatch(m -> m.food().equals(food))) {
                users.add(Amounts.usedBySnacks(draft, seat, food));
            }
        }
        return users;
    }

    /** All containers of an eater filled with the dish that uses most of the food, and the most snacks. */
    private static double mostOnAnyMenu(Draft draft, Food food) {
        double perEdible = 1 / food.edibleShare().doubleValue();
        double sum = 0;
        for (Seat seat : draft.request().seats()) {
            double inOne = 0;
            for (Dish dish : draft.menu().dishes(seat)) {
                double inThis = dish.parts().stream()
                        .mapToDouble(
                                p -> p.mostGrams() * draft.menu().mostShare(dish, p, food) * Amounts.atHand(draft, p))
                        .sum();
                inOne = Math.max(inOne, inThis);
            }
            int containers =
                    seat.eater().wishes().containersADay() * draft.request().days();
            sum += inOne * containers * perEdible
                    + Amounts.usedBySnacks(draft, seat, food).most();
        }
        return sum;
    }

    private static void needsPack(Draft draft, Food food) {
        for (Dish dish : draft.menu().dishes()) {
            List<Variant> needy = draft.menu().variants(dish).stream()
                    .filter(variant -> needsPack(draft, variant.dish(), food))
                    .toList();
            boolean asWritten = needsPack(draft, dish, food);
            if (!asWritten && needy.isEmpty()) {
                continue;
            }
            var batches = new Expression();
            if (asWritten) {
                batches.plus(draft.cooked(dish), 1);
                draft.menu().variants(dish).stream()
                        .filter(variant -> !needy.contains(variant))
                        .forEach(variant -> batches.plus(draft.cookedAs(variant), -1));
            } else {
                needy.forEach(variant -> batches.plus(draft.cookedAs(variant), 1));
            }
            var packs = new Expression();
            draft.request().kitchen().packsOf(food).forEach(p -> packs.plus(draft.packs(p), 1));
            draft.model().atLeast("pack_for." + dish.id() + "." + food.id(), packs.plus(batches, -1), 0);
        }
    }

    /** Whether the least that can be cooked of a dish takes more of a food than is at home. */
    private static boolean needsPack(Draft draft, Dish dish, Food food) {
        double least = dish.parts().stream()
                .filter(p -> !p.optional())
                .mapToDouble(p -> p.leastGrams()
                        * p.shares().getOrDefault(food, BigDecimal.ZERO).doubleValue()
                        * Amounts.atHand(draft, p))
                .sum();
        return least
                        * PlanRequest.LEAST_CONTAINERS_OF_A_DISH
                        / food.edibleShare().doubleValue()
                > draft.request().kitchen().pantryGrams(food).doubleValue();
    }
}
