package batchwright.plan;

import batchwright.food.Nutrients;
import batchwright.food.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How much of a part goes into one container.
 *
 * @param rawGrams raw edible grams, a multiple of the part's step; 0 when an optional part is left out
 */
public record Portion(Part part, int rawGrams) {
    private static final BigDecimal SCALE_STEP = BigDecimal.valueOf(Part.SCALE_STEP_GRAMS);

    public Nutrients nutrients() {
        if (rawGrams == 0) {
            return Nutrients.NONE; // not "none that is known": a part that is left out makes nothing incomplete
        }
        return part.per100g().ofGrams(BigDecimal.valueOf(rawGrams));
    }

    /** Cooked grams to weigh out, to the nearest mark of a kitchen scale: yields are only known to about 10 %. */
    public int cookedGrams() {
        return BigDecimal.valueOf(rawGrams)
                .multiply(part.yieldFactor())
                .divide(SCALE_STEP, 0, RoundingMode.HALF_UP)
                .multiply(SCALE_STEP)
                .intValueExact();
    }

    /** Whole pieces, for a part that comes in pieces. */
    public int pieces() {
        return rawGrams / part.stepGrams();
    }
}
