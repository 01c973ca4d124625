package batchwright.audit;

import batchwright.food.Food;
import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

/** Edible grams by food, and what they hold. The one place where the audit turns grams into nutrients. */
final class Grams {
    private static final BigDecimal PER = BigDecimal.valueOf(100);

    private static final BigDecimal KCAL_PER_G_OF_FAT = BigDecimal.valueOf(9);

    private final Map<Food, BigDecimal> grams = new LinkedHashMap<>();
    private final Map<String, BigDecimal> fatPouredOffByPart = new LinkedHashMap<>();
    private BigDecimal saturatedPouredOff = BigDecimal.ZERO;

    void add(Food food, BigDecimal edible) {
        if (edible.signum() != 0) {
            grams.merge(food, edible, BigDecimal::add);
        }
    }

    /** Fat of a part that nobody eats, and how much of it is saturated. */
    void pourOff(String part, BigDecimal fat, BigDecimal saturated) {
        fatPouredOffByPart.merge(part, fat, BigDecimal::add);
        saturatedPouredOff = saturatedPouredOff.add(saturated);
    }

    void add(Grams other, int times) {
        BigDecimal factor = BigDecimal.valueOf(times);
        other.grams.forEach((food, edible) -> add(food, edible.multiply(factor)));
        other.fatPouredOffByPart.forEach((part, fat) -> pourOff(part, fat.multiply(factor), BigDecimal.ZERO));
        saturatedPouredOff = saturatedPouredOff.add(other.saturatedPouredOff.multiply(factor));
    }

    Map<Food, BigDecimal> byFood() {
        return grams;
    }

    Map<String, BigDecimal> fatPouredOffByPart() {
        return fatPouredOffByPart;
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
        return sum.divide(PER).subtract(pouredOff(nutrient));
    }

    private BigDecimal pouredOff(Nutrient nutrient) {
        BigDecimal fat = fatPouredOffByPart.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        return switch (nutrient) {
            case FAT -> fat;
            case ENERGY -> fat.multiply(KCAL_PER_G_OF_FAT);
            case SATURATED_FAT -> saturatedPouredOff;
            default -> BigDecimal.ZERO;
        };
    }

    /** Whether every food has a value for the nutrient. */
    boolean knows(Nutrient nutrient) {
        return grams.keySet().stream().allMatch(food -> food.per100g().isComplete(nutrient));
    }
}
