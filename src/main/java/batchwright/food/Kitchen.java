package batchwright.food;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the files say about food, read and checked.
 *
 * @param foods by id
 * @param measures household measures by food
 * @param yields cooked yields by food
 * @param packs what the shops sell, by food
 * @param dishes by id
 * @param pantry grams at home as purchased, by food
 * @param currency ISO 4217 code of all prices
 */
public record Kitchen(
        Map<String, Food> foods,
        Map<Food, List<Measure>> measures,
        Map<Food, List<CookedYield>> yields,
        Map<Food, List<Pack>> packs,
        Map<String, Dish> dishes,
        Map<Food, BigDecimal> pantry,
        String currency) {
    public Kitchen {
        foods = ordered(foods);
        measures = ordered(measures);
        yields = ordered(yields);
        packs = ordered(packs);
        dishes = ordered(dishes);
        pantry = ordered(pantry);
    }

    private static <K, V> Map<K, V> ordered(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    public List<Measure> measuresOf(Food food) {
        return measures.getOrDefault(food, List.of());
    }

    public List<Pack> packsOf(Food food) {
        return packs.getOrDefault(food, List.of());
    }

    /** Grams at home, as purchased. */
    public BigDecimal pantryGrams(Food food) {
        return pantry.getOrDefault(food, BigDecimal.ZERO);
    }

    public Kitchen withoutPantry() {
        return new Kitchen(foods, measures, yields, packs, dishes, Map.of(), currency);
    }

    public Optional<Measure> measure(Food food, String name) {
        return measuresOf(food).stream().filter(m -> m.name().equals(name)).findFirst();
    }

    /** Every measure that may serve as a snack, in the order of the files. */
    public List<Measure> snackMeasures() {
        return measures.values().stream()
                .flatMap(List::stream)
                .filter(m -> m.snackMost() > 0)
                .toList();
    }
}
