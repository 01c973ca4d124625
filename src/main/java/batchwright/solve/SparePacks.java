package batchwright.solve;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Packs of one food that could stay in the shop. A search that is cut short buys some for grams that it left out later.
 *
 * @param used what is to be at hand for the plan [g as purchased]
 * @param inBatches of it, what is for cooking, for which food will do that spoils before the last day [g as purchased]
 */
record SparePacks(PlanRequest request, Food food, BigDecimal used, BigDecimal inBatches) {
    /** Less than this is rounding [g]. */
    private static final BigDecimal ROUNDING = new BigDecimal("0.000001");

    /** The packs without those that are not needed, the dearest left out first. */
    Map<Pack, Integer> leftOut(Map<Pack, Integer> bought) {
        Map<Pack, Integer> needed = new LinkedHashMap<>(bought);
        List<Pack> dearestFirst = bought.keySet().stream()
                .sorted(Comparator.comparing(Pack::price).reversed())
                .toList();
        for (Pack pack : dearestFirst) {
            while (needed.containsKey(pack) && isEnough(grams(needed).subtract(pack.grams()))) {
                needed.computeIfPresent(pack, (p, count) -> count == 1 ? null : count - 1);
            }
        }
        return needed;
    }

    private boolean isEnough(BigDecimal boughtGrams) {
        return covers(request.kitchen().pantryGrams(food).add(boughtGrams), used)
                && covers(request.lastingGrams(food).add(boughtGrams), used.subtract(inBatches));
    }

    private static boolean covers(BigDecimal has, BigDecimal needs) {
        return needs.subtract(has).compareTo(ROUNDING) <= 0;
    }

    private static BigDecimal grams(Map<Pack, Integer> packs) {
        return packs.entrySet().stream()
                .map(e -> e.getKey().grams().multiply(BigDecimal.valueOf(e.getValue())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
