package batchwright.food;

import batchwright.quantity.Currency;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything the files say about food, read and checked, as it is on the cooking day.
 *
 * @param foods by id
 * @param measures household measures by food
 * @param yields cooked yields by food
 * @param packs what the shops sell, by food
 * @param dishes of the everyday shelf by id: what is cooked from unless something else is asked for
 * @param pantry what is at home, by food; some of it may be past its date
 * @param currency of all prices
 * @param cookingDay from which use-by dates and ages of prices are counted
 * @param equipment what is cooked with
 * @param shops that are gone to, and what the way costs
 * @param shelves dishes that are cooked when they, or their shelf, are asked for
 */
public record Kitchen(
        Map<String, Food> foods,
        Map<Food, List<Measure>> measures,
        Map<Food, List<CookedYield>> yields,
        Map<Food, List<Pack>> packs,
        Map<String, Dish> dishes,
        Map<Food, List<Lot>> pantry,
        Currency currency,
        LocalDate cookingDay,
        Equipment equipment,
        Shops shops,
        Shelves shelves) {
    public Kitchen {
        foods = ordered(foods);
        measures = ordered(measures);
        yields = ordered(yields);
        packs = ordered(packs);
        dishes = ordered(dishes);
        pantry = ordered(pantry);
    }

    /** Cooked in a usual kitchen. */
    public Kitchen(
            Map<String, Food> foods,
            Map<Food, List<Measure>> measures,
            Map<Food, List<CookedYield>> yields,
            Map<Food, List<Pack>> packs,
            Map<String, Dish> dishes,
            Map<Food, List<Lot>> pantry,
            Currency currency,
            LocalDate cookingDay) {
        this(
                foods,
                measures,
                yields,
                packs,
                dishes,
                pantry,
                currency,
                cookingDay,
                Equipment.USUAL,
                Shops.FREE,
                Shelves.NONE);
    }

    /** A dish of any shelf. */
    public Optional<Dish> dish(String id) {
        return Optional.ofNullable(dishes.get(id)).or(() -> shelves.dish(id));
    }

    /** The dishes of all shelves, the everyday one first. */
    public List<Dish> allDishes() {
        return Stream.concat(dishes.values().stream(), shelves.all().stream()).toList();
    }

    /** Ids of the dishes of all shelves, the everyday one first. */
    public Set<String> dishIds() {
        return allDishes().stream().map(Dish::id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The same with other shelves beside the everyday one. */
    public Kitchen with(Shelves other) {
        return new Kitchen(
                foods, measures, yields, packs, dishes, pantry, currency, cookingDay, equipment, shops, other);
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

    public List<Lot> lotsOf(Food food) {
        return pantry.getOrDefault(food, List.of());
    }

    /** Grams at home, as purchased, that may be used on the cooking day. */
    public BigDecimal pantryGrams(Food food) {
        return pantryGrams(food, cookingDay);
    }

    /** Grams at home, as purchased, that may still be used on this day. */
    public BigDecimal pantryGrams(Food food, LocalDate day) {
        return lotsOf(food).stream()
                .filter(lot -> lot.keepsUntil(day))
                .map(Lot::grams)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Lots at home that may no longer be used on the cooking day. */
    public Map<Food, List<Lot>> pastTheirDate() {
        var past = new LinkedHashMap<Food, List<Lot>>();
        pantry.forEach((food, lots) -> {
            List<Lot> over =
                    lots.stream().filter(lot -> !lot.keepsUntil(cookingDay)).toList();
            if (!over.isEmpty()) {
                past.put(food, over);
            }
        });
        return past;
    }

    public Kitchen with(Equipment other) {
        return new Kitchen(foods, measures, yields, packs, dishes, pantry, currency, cookingDay, other, shops, shelves);
    }

    public Kitchen withFoods(Map<String, Food> other) {
        return new Kitchen(
                other, measures, yields, packs, dishes, pantry, currency, cookingDay, equipment, shops, shelves);
    }

    public Kitchen withDishes(Map<String, Dish> other) {
        return new Kitchen(
                foods, measures, yields, packs, other, pantry, currency, cookingDay, equipment, shops, shelves);
    }

    /** The same on another cooking day, with what is at home then. */
    public Kitchen on(LocalDate day, Map<Food, List<Lot>> atHome) {
        return new Kitchen(foods, measures, yields, packs, dishes, atHome, currency, day, equipment, shops, shelves);
    }

    public Kitchen withPacks(Map<Food, List<Pack>> other) {
        return new Kitchen(
                foods, measures, yields, other, dishes, pantry, currency, cookingDay, equipment, shops, shelves);
    }

    public Kitchen with(Shops other) {
        return new Kitchen(
                foods, measures, yields, packs, dishes, pantry, currency, cookingDay, equipment, other, shelves);
    }

    /** Names of all shops that are gone to, in the order of the files. */
    public Set<String> shopNames() {
        return packs.values().stream()
                .flatMap(List::stream)
                .map(Pack::shop)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The same where only some of the shops are gone to. */
    public Kitchen onlyAt(Predicate<String> shop) {
        Map<Food, List<Pack>> here = new LinkedHashMap<>();
        Map<Food, List<Pack>> elsewhere = new LinkedHashMap<>();
        all().forEach((food, sold) -> {
            here.put(food, sold.stream().filter(pack -> shop.test(pack.shop())).toList());
            elsewhere.put(
                    food, sold.stream().filter(pack -> !shop.test(pack.shop())).toList());
        });
        here.values().removeIf(List::isEmpty);
        elsewhere.values().removeIf(List::isEmpty);
        return withPacks(here).with(shops.withElsewhere(elsewhere));
    }

    private Map<Food, List<Pack>> all() {
        Map<Food, List<Pack>> all = new LinkedHashMap<>(packs);
        shops.elsewhere()
                .forEach((food, sold) -> all.merge(
                        food,
                        sold,
                        (a, b) -> Stream.concat(a.stream(), b.stream()).toList()));
        return all;
    }

    public Kitchen withoutPantry() {
        return new Kitchen(
                foods, measures, yields, packs, dishes, Map.of(), currency, cookingDay, equipment, shops, shelves);
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
