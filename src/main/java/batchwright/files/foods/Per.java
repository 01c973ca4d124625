package batchwright.files.foods;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What the figures of a label are for: 100 g, 100 ml of so many grams, or one or more pieces.
 *
 * @param shown as in the file: 100 g, 1 bar = 45 g
 * @param grams what it weighs
 * @param measure the household measure that it defines, if it names one
 */
public record Per(String shown, BigDecimal grams, Optional<Household> measure) {
    /** One of it, by a name in the singular: bar, cup. */
    record Household(String name, BigDecimal grams) {}
}
