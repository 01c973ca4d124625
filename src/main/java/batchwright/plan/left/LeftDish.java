package batchwright.plan.left;

import batchwright.food.Dish;
import batchwright.food.FatPouredOff;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
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
 * @param containers how many of them are eaten, at least 1
 * @param byDay how many on which day, 1 being the first; empty when any day will do
 */
public record LeftDish(Dish dish, String origin, String eater, int containers, Map<Integer, Integer> byDay) {
    public LeftDish {
        byDay = Map.copyOf(byDay);
    }

    /**
     * As a dish.
     *
     * @param id unlike any other in the kitchen
     * @param origin the dish that was cooked
     * @param grams cooked, more than 0
     * @param holds what one container holds
     * @param lastDay until when one keeps, 1 being the first day; 0 when they are frozen
     */
    public static Dish dish(String id, Dish origin, int grams, Nutrients holds, int lastDay) {
        var food = new Food(
                id,
                origin.name(),
                "left",
                Optional.empty(),
                origin.name(),
                holds.times(BigDecimal.valueOf(100).divide(BigDecimal.valueOf(grams), MathContext.DECIMAL64)),
                BigDecimal.ZERO,
                Set.of(),
                false);
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

    /** Of all containers [g]. */
    public BigDecimal grams() {
        return BigDecimal.valueOf((long) dish.parts().get(0).leastGrams() * containers);
    }

    /** How many must be on this day; empty when any number may. */
    public Optional<Integer> on(int day) {
        return byDay.isEmpty() ? Optional.empty() : Optional.of(byDay.getOrDefault(day, 0));
    }
}
