package batchwright.food;

import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * How a shop sells a food.
 *
 * @param label what the shelf says: bag, dozen
 * @param grams as purchased, refuse included
 * @param seen the day the price was seen
 * @param note free text; the demo's invented prices say so here
 */
public record Pack(Food food, String shop, String label, BigDecimal grams, Money price, LocalDate seen, String note) {
    /** Edible grams in one pack. */
    public BigDecimal edibleGrams() {
        return grams.multiply(food.edibleShare());
    }
}
