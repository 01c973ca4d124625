package batchwright.plan;

import batchwright.food.Food;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Some of the pantry that spoils by the last day of a session and is not used by it.
 *
 * @param grams as purchased
 * @param useBy the last day on which it may be used
 */
public record UseUp(Food food, BigDecimal grams, LocalDate useBy) {
    /** Nobody can use up less than this. */
    private static final BigDecimal LEAST_GRAMS = BigDecimal.ONE;

    /** By food in the order of the pantry; of a food, the earliest first. Earlier dates are used first. */
    public static List<UseUp> of(Session session) {
        LocalDate lastDay = session.request().lastDay();
        List<UseUp> left = new ArrayList<>();
        for (Food food : session.kitchen().pantry().keySet()) {
            PantryLeft.lots(session, food).stream()
                    .filter(lot -> !lot.keepsUntil(lastDay.plusDays(1)))
                    .filter(lot -> lot.grams().compareTo(LEAST_GRAMS) >= 0)
                    .forEach(lot ->
                            left.add(new UseUp(food, lot.grams(), lot.useBy().orElseThrow())));
        }
        return left;
    }
}
