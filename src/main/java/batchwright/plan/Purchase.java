package batchwright.plan;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One food's line of the shopping list. Grams are as purchased, refuse included.
 *
 * @param packs how many of which pack; empty when the pantry covers it all
 * @param usedGrams what the plan uses
 * @param fromPantryGrams of what of it is taken from the pantry (used first; what spoils before the last day in batches only)
 */
public record Purchase(Food food, Map<Pack, Integer> packs, BigDecimal usedGrams, BigDecimal fromPantryGrams) {
    public Purchase {
        packs = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(packs));
    }

    /**
     * A line of the list. The pantry is used before packs; of it, what spoils before the last day goes into batches only.
     *
     * @param used what the plan uses [g as purchased]
     * @param inBatches what of it is cooked [g as purchased]
     */
    public static Purchase of(
            PlanRequest request, Food food, Map<Pack, Integer> packs, BigDecimal used, BigDecimal inBatches) {
        BigDecimal lasting = request.lastingGrams(food);
        BigDecimal spoiling =
                request.kitchen().pantryGrams(food).subtract(lasting).min(inBatches);
        return new Purchase(
                food, packs, used, spoiling.add(used.subtract(spoiling).min(lasting)));
    }

    public BigDecimal boughtGrams() {
        return packs.entrySet().stream()
                .map(e -> e.getKey().grams().multiply(BigDecimal.valueOf(e.getValue())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What is left of the packs that were bought. */
    public BigDecimal leftGrams() {
        return boughtGrams().add(fromPantryGrams).subtract(usedGrams);
    }

    public Money cost() {
        return packs.entrySet().stream()
                .map(e -> e.getKey().price().times(e.getValue()))
                .reduce(Money.ZERO, Money::plus);
    }
}
