package batchwright.plan;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
            BigDecimal fromPantry =
                    plan.purchase(food).map(Purchase::fromPantryGrams).orElse(BigDecimal.ZERO);
            BigDecimal lasting = kitchen.pantryGrams(food, lastDay);
            BigDecimal cooked = cooked(plan, food).min(kitchen.pantryGrams(food).subtract(lasting));
            List<Lot> lots = kitchen.lotsOf(food).stream()
                    .filter(lot -> lot.keepsUntil(kitchen.cookingDay()))
                    .sorted(Comparator.comparing(lot -> lot.useBy().orElse(LocalDate.MAX)))
                    .toList();
            List<Lot> spoiling =
                    lots.stream().filter(lot -> !lot.keepsUntil(lastDay)).toList();
            List<Lot> keeping =
                    lots.stream().filter(lot -> lot.keepsUntil(lastDay)).toList();
            List<Lot> over = new ArrayList<>(over(spoiling, cooked));
            over.addAll(over(keeping, fromPantry.subtract(cooked)));
            over.stream()
                    .filter(lot -> !lot.keepsUntil(lastDay.plusDays(1)))
                    .filter(lot -> lot.grams().compareTo(LEAST_GRAMS) >= 0)
                    .forEach(lot ->
                            left.add(new UseUp(food, lot.grams(), lot.useBy().orElseThrow())));
        }
        return left;
    }

    /** Grams as purchased that go into batches. */
    private static BigDecimal cooked(Plan plan, Food food) {
        return plan.batches().stream()
                .map(batch -> batch.ingredients().getOrDefault(food, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(food.edibleShare(), MathContext.DECIMAL64);
    }

    /** What remains of lots when so much is taken, in their order. */
    private static List<Lot> over(List<Lot> lots, BigDecimal taken) {
        List<Lot> over = new ArrayList<>();
        BigDecimal left = taken;
        for (Lot lot : lots) {
            BigDecimal here = left.min(lot.grams());
            over.add(new Lot(lot.grams().subtract(here), lot.useBy()));
            left = left.subtract(here);
        }
        return over;
    }
}
