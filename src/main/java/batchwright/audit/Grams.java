package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** Edible grams by food, and what they hold. The one place where the audit turns grams into nutrients. */
final class Grams {
    private static final BigDecimal PER = BigDecimal.valueOf(100);

    private final Map<Food, BigDecimal> grams = new LinkedHashMap<>();

    void add(Food food, BigDecimal edible) {
        if (edible.signum() != 0) {
            grams.merge(food, edible, BigDecimal::add);
        }
    }

    void add(Grams other, int times) {
        other.grams.forEach((food, edible) -> add(food, edible.multiply(BigDecimal.valueOf(times))));
    }

    Map<Food, BigDecimal> byFood() {
        return grams;
    }

    BigDecimal of(Food food) {
        return grams.getOrDefault(food, BigDecimal.ZERO);
    }

    /** The known amount of a nutrient, in its unit. */
    BigDecimal holds(Nutrient nutrient) {
        BigDecimal sum = BigDecimal.ZERO;
        for (var entry : grams.entrySet()) {
            sum = sum.add(entry.getKey().per100g().get(nutrient).multiply(entry.getValue()));
        }
        return sum.divide(PER);
    }

    /** Whether every food has a value for the nutrient. */
    boolean knows(Nutrient nutrient) {
        return grams.keySet().stream().allMatch(food -> food.per100g().isComplete(nutrient));
    }
}
