package batchwright.app.newdish;

import batchwright.food.Dish;
import batchwright.food.Food;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

/**
 * How long a dish keeps, by the riskiest thing in it. Days lie within the 3 to 4 of published home advice (USDA FSIS, read in reports of
 * it; {@link Dish#ADVISED_FRIDGE_DAYS}): which foods take the shorter end is our choice. What does not freeze well is common practice.
 *
 * @param days in the fridge, the cooking day being day 1
 * @param why in a sentence
 */
record ShelfLife(int days, boolean freezes, String why) {
    private static final int SHORTER = 3;

    private record Risk(String says, Predicate<Food> isIn) {}

    private static final List<Risk> SHORT = List.of(
            new Risk("fish and seafood", food -> food.group().equals("fish")),
            new Risk("rice", food -> has(food, "rice") && food.group().equals("grain")),
            new Risk("eggs", food -> food.group().equals("egg")));
    private static final List<Risk> NOT_FROZEN = List.of(
            new Risk(
                    "potatoes turn grainy",
                    food -> food.group().equals("starchy_vegetable") && has(food, "potato") && !has(food, "sweet")),
            new Risk("eggs turn rubbery", food -> food.group().equals("egg")),
            new Risk("yogurt, cream and soft cheese separate", ShelfLife::separates),
            new Risk("raw cucumber and salad go limp", food -> has(food, "cucumber") || has(food, "lettuce")));

    static ShelfLife of(Collection<Food> foods, boolean heated) {
        List<String> shortened = found(SHORT, foods);
        List<String> frozen = new ArrayList<>(found(NOT_FROZEN, foods));
        if (!heated) {
            frozen.add("nothing in it is cooked");
        }
        int days = shortened.isEmpty() ? Dish.ADVISED_FRIDGE_DAYS : SHORTER;
        String keeps = shortened.isEmpty()
                ? "published home advice is 3 to 4 days"
                : "for " + String.join(", ", shortened) + " the shorter end of the published 3 to 4 days";
        String freezing =
                frozen.isEmpty() ? "nothing in it minds freezing" : "not frozen: " + String.join(", ", frozen);
        return new ShelfLife(days, frozen.isEmpty(), keeps + "; " + freezing);
    }

    private static List<String> found(List<Risk> risks, Collection<Food> foods) {
        return risks.stream()
                .filter(risk -> foods.stream().anyMatch(risk.isIn))
                .map(Risk::says)
                .toList();
    }

    private static boolean separates(Food food) {
        return food.group().equals("dairy")
                && (has(food, "yogurt") || has(food, "cream") || has(food, "cottage") || has(food, "ricotta"));
    }

    private static boolean has(Food food, String word) {
        return food.id().contains(word);
    }
}
