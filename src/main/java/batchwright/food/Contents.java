package batchwright.food;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What one pack holds.
 *
 * @param units how many are sold together, such as 4 in a multipack of 4 x 400 g; bought and paid as a whole
 * @param unitGrams weight of one as the shelf says it, with refuse and with liquid
 * @param drainedGrams what is left of one after draining; empty when nothing is drained
 */
public record Contents(int units, BigDecimal unitGrams, Optional<BigDecimal> drainedGrams) {
    /** A single pack of which nothing is drained. */
    public static Contents of(BigDecimal grams) {
        return new Contents(1, grams, Optional.empty());
    }

    /** Neither a multipack nor drained. */
    public boolean isPlain() {
        return units == 1 && drainedGrams.isEmpty();
    }

    /** Grams to be used, refuse included but no liquid that is drained: what the stock counts. */
    public BigDecimal grams() {
        return drainedGrams.orElse(unitGrams).multiply(BigDecimal.valueOf(units));
    }
}
