package batchwright.solve;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;

/**
 * A small random kitchen: few foods, dishes of one to three parts with few steps each. Recipes are written so that every share
 * is a whole number of sixtieths, which lets an enumeration count exactly in whole numbers.
 */
final class RandomKitchen {
    private static final LocalDate SEEN = LocalDate.of(2026, 1, 5);
    private static final int[] WHOLES = {10, 12, 20, 30, 60};

    private final RandomGenerator random;
    private final int mostWays;

    /** @param mostWays most ways to fill a container of each dish, one after another multiplied */
    RandomKitchen(RandomGenerator random, int mostWays) {
        this.random = random;
        this.mostWays = mostWays;
    }

    Kitchen kitchen() {
        Map<String, Food> foods = new LinkedHashMap<>();
        int howMany = random.nextInt(3, 9);
        for (int i = 0; i < howMany; i++) {
            foods.put("food" + i, food("food" + i));
        }
        List<Food> list = List.copyOf(foods.values());
        Map<String, Dish> dishes = new LinkedHashMap<>();
        int howManyDishes = random.nextInt(2, 5);
        int waysEach = (int) Math.floor(Math.pow(mostWays, 1.0 / howManyDishes));
        for (int i = 0; i < howManyDishes; i++) {
            dishes.put("dish" + i, dish("dish" + i, list, waysEach));
        }
        Map<Food, List<Measure>> measures = new LinkedHashMap<>();
        Map<Food, List<Pack>> packs = new LinkedHashMap<>();
        Map<Food, List<Lot>> pantry = new LinkedHashMap<>();
        for (Food food : list) {
            if (chance(0.4)) {
                measures.put(food, List.of(measure(food)));
            }
            if (chance(0.35)) {
                pantry.put(food, List.of(Lot.of(BigDecimal.valueOf(random.nextInt(5, 80) * 10L))));
            }
            if (chance(0.98)) {
                packs.put(food, packs(food));
            }
        }
        return new Kitchen(foods, measures, Map.of(), packs, dishes, pantry, Currency.USD, SEEN);
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    /** A tenth of something, from least to most. */
    private BigDecimal tenths(int least, int most) {
        return BigDecimal.valueOf(random.nextInt(least * 10, most * 10 + 1), 1);
    }

    private Food food(String id) {
        boolean vegetable = chance(0.4);
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        values.put(Nutrient.ENERGY, vegetable ? tenths(20, 100) : tenths(80, 500));
        values.put(Nutrient.PROTEIN, vegetable ? tenths(0, 6) : tenths(2, 30));
        values.put(Nutrient.FAT, vegetable ? tenths(0, 1) : tenths(0, 25));
        values.put(Nutrient.FIBRE, vegetable ? tenths(1, 6) : tenths(0, 8));
        values.put(Nutrient.FRUIT_VEG, BigDecimal.valueOf(vegetable ? 100 : 0));
        BigDecimal refuse = BigDecimal.valueOf(chance(0.3) ? random.nextInt(1, 50) : 0);
        Set<Allergen> allergens = chance(0.3) ? Set.of(chance(0.5) ? Allergen.MILK : Allergen.EGG) : Set.of();
        return new Food(id, id, "invented", Optional.empty(), id, Nutrients.of(values), refuse, allergens, chance(0.5));
    }

    private Measure measure(Food food) {
        return new Measure(
                food, "piece", BigDecimal.valueOf(random.nextInt(15, 150)), random.nextInt(1, 4), "invented");
    }

    private List<Pack> packs(Food food) {
        List<Pack> packs = new ArrayList<>();
        int grams = random.nextInt(2, 16) * 50;
        int minor = random.nextInt(20, 500);
        packs.add(pack(food, grams, minor));
        if (chance(0.5)) {
            packs.add(pack(food, grams * random.nextInt(2, 4) - 50, (int) (minor * random.nextDouble(1.2, 2.4))));
        }
        return packs;
    }

    private static Pack pack(Food food, int grams, int minor) {
        return new Pack(food, "shop", grams + " g", BigDecimal.valueOf(grams), new Money(minor), SEEN, "invented");
    }

    private Dish dish(String id, List<Food> foods, int ways) {
        List<Part> parts = new ArrayList<>();
        int howMany = random.nextInt(1, 4);
        int left = ways;
        for (int i = 0; i < howMany; i++) {
            Part part = part("part" + i, foods, left);
            left /= waysOf(part);
            parts.add(part);
        }
        boolean freezes = chance(0.75);
        return new Dish(
                id, id, Dish.Kind.MAIN, random.nextInt(1, 4), freezes, "Until steaming.", parts, List.of(), List.of());
    }

    private static int waysOf(Part part) {
        return (part.mostGrams() - part.leastGrams()) / part.stepGrams() + 1 + (part.optional() ? 1 : 0);
    }

    private Part part(String name, List<Food> foods, int mostWays) {
        boolean optional = mostWays > 1 && chance(0.25);
        int mostSteps = Math.max(1, Math.min(12, mostWays - (optional ? 1 : 0)));
        int steps = random.nextInt((mostSteps + 1) / 2, mostSteps + 1);
        boolean pieces = chance(0.25);
        int step = pieces ? random.nextInt(30, 90) : 5;
        int least = pieces ? step : step * random.nextInt(8, 36);
        return new Part(name, optional, step, pieces, least, least + (steps - 1) * step, mix(foods));
    }

    private List<Ingredient> mix(List<Food> foods) {
        Food one = foods.get(random.nextInt(foods.size()));
        Food other = foods.get(random.nextInt(foods.size()));
        int whole = WHOLES[random.nextInt(WHOLES.length)];
        if (one.equals(other) || chance(0.4)) {
            return List.of(ingredient(one, whole));
        }
        int amount = random.nextInt(1, whole);
        return List.of(ingredient(one, amount), ingredient(other, whole - amount));
    }

    private static Ingredient ingredient(Food food, int amount) {
        return new Ingredient(food, BigDecimal.valueOf(amount), Optional.empty());
    }
}
