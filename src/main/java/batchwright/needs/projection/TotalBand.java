package batchwright.needs.projection;

import batchwright.quantity.Energy;

/**
 * The energy a day that holds the weight, and between which ends it may well be.
 *
 * @param least lower end, more than 0
 * @param likely as estimated
 * @param most upper end
 */
public record TotalBand(Energy least, Energy likely, Energy most) {
    public TotalBand {
        if (!(least.kcal() > 0 && least.compareTo(likely) <= 0 && likely.compareTo(most) <= 0)) {
            throw new IllegalArgumentException(
                    "least (" + least + "), likely (" + likely + ") and most (" + most + ") must rise from above 0.");
        }
    }
}
