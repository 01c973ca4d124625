package batchwright.solve.session;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.PlanRequest;
import batchwright.plan.Session;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Of which foods {@link EachAlone} should count packs, and of which the weight: whichever comes to more in the plans seen so far.
 * Both are right for every food, so a poor choice makes a bound lower, never wrong.
 */
final class PacksOrWeight {
    private final PlanRequest request;
    /** How much more packs come to than the weight [minor units]. */
    private final Map<Food, Double> more = new HashMap<>();

    PacksOrWeight(PlanRequest request) {
        this.request = request;
    }

    /** @param times how many sessions are as this one */
    void seen(Session session, int times) {
        Used used = Used.of(session);
        for (Food food : request.kitchen().packs().keySet()) {
            more.merge(food, times * more(food, used.of(food)), Double::sum);
        }
    }

    private double more(Food food, BigDecimal used) {
        List<Pack> sold = request.kitchen().packsOf(food);
        BigDecimal missing = used.subtract(request.kitchen().pantryGrams(food));
        if (sold.isEmpty() || missing.signum() <= 0) {
            return 0;
        }
        double packs = PackCover.of(sold, missing).stream()
                .mapToLong(pack -> pack.price().minor())
                .sum();
        double aGram = sold.stream()
                .mapToDouble(pack -> pack.price().minor() / pack.grams().doubleValue())
                .min()
                .orElseThrow();
        return packs / request.cooking().sessions() - aGram * missing.doubleValue();
    }

    Set<Food> inPacks() {
        Set<Food> foods = new LinkedHashSet<>();
        for (Food food : request.kitchen().packs().keySet()) {
            if (more.getOrDefault(food, 0.0) > 0) {
                foods.add(food);
            }
        }
        return foods;
    }
}
