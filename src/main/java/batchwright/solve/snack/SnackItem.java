package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One kind of food that can be eaten in whole pieces (1 banana, a handful of almonds). All figures are for one piece.
 *
 * @param code name of the item; two items of one search never share it
 * @param energyKcal energy of a piece [kcal], at least 0
 * @param proteinG protein of a piece [g], at least 0
 * @param grams weight of a piece [g], at least 0
 * @param cost what a piece costs, at least 0 [minor units of the currency]
 * @param most most pieces to be had, at least 0
 * @param atHome whether the pieces come from the pantry; settles ties only, so give them the cost you mean
 */
public record SnackItem(
        String code,
        BigDecimal energyKcal,
        BigDecimal proteinG,
        BigDecimal grams,
        BigDecimal cost,
        int most,
        boolean atHome) {

    /** @throws IllegalArgumentException when the code is blank or a figure is negative */
    public SnackItem {
        Objects.requireNonNull(code, "code");
        if (code.isBlank()) {
            throw new IllegalArgumentException("code (" + code + ") must not be blank.");
        }
        Check.notNegative("energyKcal of " + code, energyKcal);
        Check.notNegative("proteinG of " + code, proteinG);
        Check.notNegative("grams of " + code, grams);
        Check.notNegative("cost of " + code, cost);
        Check.atLeast("most of " + code, most, 0);
    }
}
