package batchwright.plan.left;

import batchwright.food.Dish;
import batchwright.food.FatPouredOff;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Containers of one eater that are alike and left from before.
 *
 * @param dish they are, to a search; its one part fills one container exactly
 * @param origin short name of the dish that was cooked
 * @param eater whose they are
 * @param others for whom they are, when their own eater has no room for them: each of these may have some, and nobody must; empty when
 *     their own eater has them all
 * @param containers how many there are, at least 1
 * @param byDay how many on which day, 1 being the first; empty when any day will do
 */
public record LeftDish(
        Dish dish, String origin, String eater, Set<String> others, int containers, Map<Integer, Integer> byDay) {
    public LeftDish {
        others = Set.copyOf(others);
        byDay = Map.copyOf(byDay);
    }

    /** Eaten by their own eater, all of them. */
    public LeftDish(Dish dish, String origin, String eater, int containers, Map<Integer, Integer> byDay) {
        this(dish, origin, eater, Set.of(), containers, byDay);
    }

    /** Whether all of them must be eaten; else they are only offered. */
    public boolean isEaten() {
        return others.isEmpty();
    }

    public boolean isFor(String someone) {
        return isEaten() ? eater.equals(someone) : others.contains(someone);
    }

    /** How many must be eaten if any are. */
    public int least() {
        return isEaten() ? containers : 1;
    }

    /**
     * As a dish.
     *
     * @param id unlike any other in the kitchen
     * @param origin the dish that was cooked
     * @param madeOf what of foods is for certain in a container: who avoids that may not have it
     * @param grams cooked, more than 0
     * @param holds what one container holds
     * @param lastDay until when one keeps, 1 being the first day; 0 when they are frozen
     */
    public static Dish dish(String id, Dish origin, Set<Origin> madeOf, int grams, Nutrients holds, int lastDay) {
        var food = new Food(
                id,
                origin.name(),
                "left",
                Optional.empty(),
                origin.name(),
                holds.times(BigDecimal.valueOf(100).divide(BigDecimal.valueOf(grams), MathContext.DECIMAL64)),
                BigDecimal.ZERO,
                origin.allergens(),
                false,
                Origins.of(madeOf, Set.of()),
                Set.of());
        var whole = new Part(
                "all of it",
                false,
                grams,
                true,
                grams,
                grams,
                List.of(new Ingredient(food, BigDecimal.valueOf(grams), Optional.empty())),
                FatPouredOff.NONE);
        return new Dish(
                id,
                origin.name(),
                origin.kind(),
                lastDay,
                lastDay == 0,
                origin.reheat(),
                List.of(whole),
                List.of(),
                List.of());
    }

    public Food food() {
        return dish.parts().get(0).mix().get(0).food();
    }

    /** What one container holds. */
    public Nutrients holds() {
        return food().per100g().ofGrams(BigDecimal.valueOf(dish.parts().get(0).leastGrams()));
    }

    /** Of all containers [g]. */
    public BigDecimal grams() {
        return BigDecimal.valueOf((long) dish.parts().get(0).leastGrams() * containers);
    }

    /** How many must be on this day; empty when any number may. */
    public Optional<Integer> on(int day) {
        return byDay.isEmpty() ? Optional.empty() : Optional.of(byDay.getOrDefault(day, 0));
    }
}
