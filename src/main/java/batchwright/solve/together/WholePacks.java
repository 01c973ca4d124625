package batchwright.solve.together;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import batchwright.solve.session.PackCover;
import batchwright.solve.session.Used;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The shopping for meals that are known, in whole packs; what is at home is used first. Of most of a large amount the pack with the best price
 * by weight is bought, and the cheapest packs for the rest.
 */
final class WholePacks {
    /** Less than this is a rounding error. */
    private static final BigDecimal LEAST_GRAMS = new BigDecimal("0.000001");

    /** So many of the largest pack are chosen together with smaller ones. */
    private static final BigDecimal CHOSEN = BigDecimal.valueOf(12);

    private final PlanRequest request;
    private final Used used;
    private final Set<String> shops;

    private WholePacks(PlanRequest request, Used used, Set<String> shops) {
        this.request = request;
        this.used = used;
        this.shops = shops;
    }

    /** The cheapest of going to all shops, to one, and to all but one; empty when a food that is needed is not sold. */
    static Optional<Session> shop(Session meals) {
        Used used = Used.of(meals);
        return waysToShop(meals.request()).stream()
                .flatMap(shops -> new WholePacks(meals.request(), used, shops).list().stream())
                .map(meals::withShopping)
                .min(Comparator.comparing(Session::cost));
    }

    private static List<Set<String>> waysToShop(PlanRequest request) {
        Set<String> all = request.kitchen().shopNames();
        List<Set<String>> ways = new ArrayList<>(List.of(all));
        if (request.kitchen().shops().tripsCost() && all.size() > 1) {
            for (String one : all) {
                Set<String> others = new LinkedHashSet<>(all);
                others.remove(one);
                ways.add(Set.of(one));
                ways.add(others);
            }
        }
        return ways;
    }

    private Optional<List<Purchase>> list() {
        List<Purchase> lines = new ArrayList<>();
        for (Food food : request.kitchen().foods().values()) {
            if (used.of(food).signum() > 0) {
                BigDecimal needed = needed(food);
                List<Pack> packs = needed.signum() > 0 ? packs(food, needed) : List.of();
                if (needed.signum() > 0 && packs.isEmpty()) {
                    return Optional.empty();
                }
                Map<Pack, Integer> counts = new LinkedHashMap<>();
                packs.forEach(pack -> counts.merge(pack, 1, Integer::sum));
                lines.add(Purchase.of(request, food, counts, used.of(food), used.cooked(food)));
            }
        }
        return Optional.of(lines);
    }

    /** What is missing, room to spare included; what spoils before the last day is for cooking only. */
    private BigDecimal needed(Food food) {
        BigDecimal missing =
                used.of(food).add(used.room(food)).subtract(request.kitchen().pantryGrams(food));
        BigDecimal besides = used.besides(food).subtract(request.lastingGrams(food));
        return missing.max(besides).subtract(LEAST_GRAMS);
    }

    private List<Pack> packs(Food food, BigDecimal needed) {
        List<Pack> sold = request.kitchen().packsOf(food).stream()
                .filter(pack -> shops.contains(pack.shop()))
                .toList();
        List<Pack> loose = sold.stream().filter(Pack::isLoose).toList();
        List<Pack> inPacks = sold.stream().filter(pack -> !pack.isLoose()).toList();
        List<Pack> one = cover(inPacks, needed);
        List<Pack> other = cover(loose, needed);
        return one.isEmpty() || (!other.isEmpty() && cost(other).compareTo(cost(one)) < 0) ? other : one;
    }

    private static Money cost(List<Pack> packs) {
        return packs.stream().map(Pack::price).reduce(Money.ZERO, Money::plus);
    }

    private static List<Pack> cover(List<Pack> sold, BigDecimal needed) {
        if (sold.isEmpty()) {
            return List.of();
        }
        Pack best = sold.stream().min(ByWorth::byPriceOfAGram).orElseThrow();
        BigDecimal largest = sold.stream().map(Pack::grams).reduce(BigDecimal.ZERO, BigDecimal::max);
        int sure = needed.subtract(largest.multiply(CHOSEN))
                .divide(best.grams(), 0, RoundingMode.DOWN)
                .max(BigDecimal.ZERO)
                .intValueExact();
        BigDecimal rest = needed.subtract(best.grams().multiply(BigDecimal.valueOf(sure)));
        List<Pack> packs = new ArrayList<>();
        for (int n = 0; n < sure; n++) {
            packs.add(best);
        }
        packs.addAll(PackCover.of(sold, rest));
        return withoutNeedless(packs, needed);
    }

    /** The dearest first. */
    private static List<Pack> withoutNeedless(List<Pack> packs, BigDecimal needed) {
        BigDecimal over = packs.stream()
                .map(Pack::grams)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .subtract(needed);
        List<Pack> kept = new ArrayList<>();
        for (Pack pack : packs.stream()
                .sorted(Comparator.comparing(Pack::price).reversed())
                .toList()) {
            if (pack.grams().compareTo(over) <= 0) {
                over = over.subtract(pack.grams());
            } else {
                kept.add(pack);
            }
        }
        return kept;
    }
}
