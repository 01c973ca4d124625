package batchwright.solve;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Pack;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The cheapest way to have enough of each food: the pantry, and every number of each pack, by weight or in packs but not both. */
final class EveryPurchase {
    static final long IMPOSSIBLE = Long.MAX_VALUE;

    private final Kitchen kitchen;
    private final List<Food> foods;
    private final int days;
    private final List<Map<List<Long>, Long>> known = new ArrayList<>();

    EveryPurchase(Kitchen kitchen, List<Food> foods, int days) {
        this.kitchen = kitchen;
        this.foods = foods;
        this.days = days;
        foods.forEach(food -> known.add(new HashMap<>()));
    }

    /** @param used edible grams of each food, in parts, as {@link BruteForce#spoils} says */
    long leastCost(long[] used) {
        long cost = 0;
        for (int f = 0; f < foods.size(); f++) {
            long here = known.get(f).computeIfAbsent(List.of(used[f], used[foods.size() + f]), leastFor(foods.get(f)));
            if (here == IMPOSSIBLE) {
                return IMPOSSIBLE;
            }
            cost += here;
        }
        return cost;
    }

    /** Edible = as purchased x (100 - refuse) / 100; both sides are taken times 100. */
    private Function<List<Long>, Long> leastFor(Food food) {
        long edibleOfHundred =
                BigDecimal.valueOf(100).subtract(food.refusePercent()).longValueExact();
        List<Pack> packs = kitchen.packs().getOrDefault(food, List.of());
        long perGram = edibleOfHundred * BruteForce.PARTS;
        long home = home(food, kitchen.cookingDay());
        long lasting = home(food, kitchen.cookingDay().plusDays(days - 1));
        return used -> {
            long missing = used.get(0) * 100 - home * perGram;
            long missingBesides = used.get(1) * 100 - lasting * perGram;
            long all = Math.max(missing, missingBesides);
            return Math.min(
                    cheapest(packs.stream().filter(Pack::isLoose).toList(), 0, all, perGram),
                    cheapest(packs.stream().filter(p -> !p.isLoose()).toList(), 0, all, perGram));
        };
    }

    /** Grams that are not past their date on this day. */
    private long home(Food food, LocalDate day) {
        long grams = 0;
        for (Lot lot : kitchen.lotsOf(food)) {
            boolean past = lot.useBy().isPresent() && lot.useBy().get().isBefore(day);
            grams += past ? 0 : lot.grams().longValueExact();
        }
        return grams;
    }

    private static long cheapest(List<Pack> packs, int from, long missing, long perGram) {
        if (missing <= 0) {
            return 0;
        }
        if (from == packs.size()) {
            return IMPOSSIBLE;
        }
        long best = IMPOSSIBLE;
        long cost = 0;
        long holds = packs.get(from).grams().longValueExact() * perGram;
        for (long left = missing; ; left -= holds) {
            long rest = cheapest(packs, from + 1, left, perGram);
            if (rest != IMPOSSIBLE) {
                best = Math.min(best, cost + rest);
            }
            if (left <= 0) {
                return best;
            }
            cost += packs.get(from).price().minor();
        }
    }
}
