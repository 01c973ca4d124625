package batchwright.solve.dish;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Pack;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The best purchase of one food for every amount that may be needed: at least cost, and then with the least left over of what
 * spoils, in the fewest packs. A list of baskets, each the best up to what it holds.
 */
final class Shelf {
    private final List<Pack> packs;
    private final double pantry;
    private final double perGram;
    private final boolean spoils;
    private final List<Basket> best;

    /**
     * So many of each pack.
     *
     * @param grams as purchased, in all of them
     * @param minor what they cost
     * @param packs how many; loose goods are one bag however much it is, and do not count
     */
    private record Basket(double grams, long minor, int packs, int[] counts) {
        Basket with(int k, int count, Pack pack) {
            int[] more = counts.clone();
            more[k] = count;
            return new Basket(
                    grams + count * pack.grams().doubleValue(),
                    minor + count * pack.price().minor(),
                    packs + (pack.isLoose() ? 0 : count),
                    more);
        }
    }

    /** @param mostUsed no more than this is ever asked for [g as purchased] */
    Shelf(Kitchen kitchen, Food food, double mostUsed) {
        packs = kitchen.packsOf(food);
        pantry = kitchen.pantryGrams(food).doubleValue();
        spoils = food.perishable();
        perGram = packs.stream()
                .mapToDouble(p -> p.price().minor() / p.grams().doubleValue())
                .min()
                .orElse(0);
        List<Basket> all = new ArrayList<>(baskets(mostUsed - pantry, Pack::isLoose));
        all.addAll(baskets(mostUsed - pantry, pack -> !pack.isLoose()));
        best = undominated(all);
    }

    /** Of packs of one kind only: a food is bought by weight or in packs, not both. */
    private List<Basket> baskets(double mostMissing, Predicate<Pack> kind) {
        List<Basket> sofar = List.of(new Basket(0, 0, 0, new int[packs.size()]));
        for (int k = 0; k < packs.size(); k++) {
            if (!kind.test(packs.get(k))) {
                continue;
            }
            List<Basket> next = new ArrayList<>();
            double grams = packs.get(k).grams().doubleValue();
            for (Basket basket : sofar) {
                int most = (int) Math.ceil(Math.max(0, mostMissing - basket.grams) / grams);
                for (int count = 0; count <= most; count++) {
                    next.add(basket.with(k, count, packs.get(k)));
                }
            }
            sofar = undominated(next);
        }
        return sofar;
    }

    /** By what they hold, upwards; without those beaten by another that holds as much or more. */
    private List<Basket> undominated(List<Basket> baskets) {
        Comparator<Basket> better = Comparator.comparingLong(Basket::minor);
        better = spoils
                ? better.thenComparingDouble(Basket::grams).thenComparingInt(Basket::packs)
                : better.thenComparingInt(Basket::packs).thenComparingDouble(Basket::grams);
        baskets.sort(Comparator.comparingDouble(Basket::grams).thenComparing(better.reversed()));
        List<Basket> kept = new ArrayList<>();
        for (int i = baskets.size() - 1; i >= 0; i--) {
            if (kept.isEmpty() || better.compare(baskets.get(i), kept.get(kept.size() - 1)) < 0) {
                kept.add(baskets.get(i));
            }
        }
        Collections.reverse(kept);
        return kept;
    }

    /** The best purchase for so much [g as purchased]; -1 when it cannot be had. */
    private int find(double used) {
        double missing = used - pantry - Needed.HAIR;
        int low = 0;
        int high = best.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (best.get(middle).grams < missing) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low < best.size() ? low : -1;
    }

    /** Least cost of having so much [minor units]; {@link Long#MAX_VALUE} when it cannot be had. */
    long minor(double used) {
        int found = find(used);
        return found < 0 ? Long.MAX_VALUE : best.get(found).minor;
    }

    /** What the leftovers that spoil have cost [minor units]. */
    double spoiledMinor(double used) {
        double missing = Math.max(0, used - pantry);
        return spoils ? (best.get(find(used)).grams - missing) * perGram : 0;
    }

    int packs(double used) {
        return best.get(find(used)).packs;
    }

    Map<Pack, Integer> purchase(double used) {
        Basket basket = best.get(find(used));
        Map<Pack, Integer> bought = new LinkedHashMap<>();
        for (int k = 0; k < packs.size(); k++) {
            if (basket.counts[k] > 0) {
                bought.put(packs.get(k), basket.counts[k]);
            }
        }
        return bought;
    }
}
