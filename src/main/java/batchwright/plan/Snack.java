package batchwright.plan;

import batchwright.food.Measure;
import batchwright.food.Nutrients;
import java.math.BigDecimal;

/** So many whole household measures of a food, eaten besides the containers. */
public record Snack(Measure measure, int count) {
    /** Edible grams. */
    public BigDecimal grams() {
        return measure.grams().multiply(BigDecimal.valueOf(count));
    }

    public Nutrients nutrients() {
        return measure.food().per100g().ofGrams(grams());
    }
}
