package batchwright.food;

import batchwright.quantity.Money;
import java.math.BigDecimal;

/** So much money for so many grams, as the shelf says it: of a pack, or of goods that are sold loose by weight. */
public record PriceTag(BigDecimal grams, Money price) {
    /** What other grams cost at this price, rounded up to the cent. */
    public Money of(BigDecimal otherGrams) {
        return price.shareUp(otherGrams, grams);
    }
}
