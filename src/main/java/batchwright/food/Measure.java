package batchwright.food;

import java.math.BigDecimal;

/**
 * A household measure of a food, such as 1 medium banana.
 *
 * @param name singular: medium, cup, tbsp, slice
 * @param grams edible grams of one
 * @param snackMost most of them in one day as a snack; 0 when it is not offered as a snack
 * @param source where the grams come from
 * @param snackKind {@link #SPREAD}, {@link #CARRIER} or any word for what is alike, such as milk; empty when nothing is said
 * @param onlyNamed whether plans offer it as a snack only to eaters whose profile names the food
 */
public record Measure(
        Food food, String name, BigDecimal grams, int snackMost, String source, String snackKind, boolean onlyNamed) {
    /** Is eaten on a carrier. */
    public static final String SPREAD = "spread";
    /** Bread, or a fruit: what a spread is eaten on. */
    public static final String CARRIER = "carrier";
    /** How many measures of spreads go on one carrier. Our choice. */
    public static final int SPREADS_ON_A_CARRIER = 2;

    /** One without a kind. */
    public Measure(Food food, String name, BigDecimal grams, int snackMost, String source) {
        this(food, name, grams, snackMost, source, "");
    }

    /** Of which plans make use for anybody. */
    public Measure(Food food, String name, BigDecimal grams, int snackMost, String source, String snackKind) {
        this(food, name, grams, snackMost, source, snackKind, false);
    }

    public boolean isSpread() {
        return snackKind.equals(SPREAD);
    }

    public boolean isCarrier() {
        return snackKind.equals(CARRIER);
    }

    /** Whether a day has one snack of its kind only. */
    public boolean isOneOfItsKind() {
        return !snackKind.isEmpty() && !isSpread() && !isCarrier();
    }
}
