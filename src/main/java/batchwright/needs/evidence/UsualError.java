package batchwright.needs.evidence;

import batchwright.quantity.Energy;

/**
 * Error of an energy equation for one person.
 *
 * @param kcal plus or minus [kcal/d]
 * @param says what the figure means and where it comes from
 */
public record UsualError(double kcal, String says) {
    private static final double TEN_PERCENT = 0.10;

    /**
     * Where no error figure of its own is known: the best supported equations come within 10 % of measured resting energy in
     * 70 to 80 people of 100.
     */
    public static UsualError tenPercentOf(Energy perDay) {
        return new UsualError(perDay.kcal() * TEN_PERCENT, "10 % taken; about 20-30 people in 100 fall outside");
    }

    /** For a total, where no error figure could be checked. */
    public static UsualError uncheckedTenPercentOf(Energy perDay) {
        return new UsualError(perDay.kcal() * TEN_PERCENT, "10 % taken, for want of a checked figure");
    }
}
