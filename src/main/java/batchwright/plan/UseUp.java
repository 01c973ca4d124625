package batchwright.plan;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Some of the pantry that spoils by the last day of the plan and is not used by it.
 *
 * @param grams as purchased
 * @param useBy the last day on which it may be used
 */
public record UseUp(Food food, BigDecimal grams, LocalDate useBy) {
    /** Less than this nobody can use up. */
    private static final BigDecimal LEAST_GRAMS = BigDecimal.ONE;

    /** By food in the order of the pantry; of a food, the earliest first. Earlier dates are used first. */
    public static List<UseUp> of(Kitchen kitchen, int days, Plan plan) {
        LocalDate lastDay = kitchen.cookingDay().plusDays(days - 1L);
        List<UseUp> left = new ArrayList<>();
        for (Food food : kitchen.pantry().keySet()) {
            PantryLeft.lots(kitchen, days, plan, food).stream()
                    .filter(lot -> !lot.keepsUntil(lastDay.plusDays(1)))
                    .filter(lot -> lot.grams().compareTo(LEAST_GRAMS) >= 0)
                    .forEach(lot ->
                            left.add(new UseUp(food, lot.grams(), lot.useBy().orElseThrow())));
        }
        return left;
    }
}
