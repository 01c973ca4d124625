package batchwright.plan.pot;

/**
 * What containers that are alike would best get from a pot.
 *
 * @param containers how many, at least 1
 * @param best grams with which each misses its nutrients least
 * @param weight what a gram squared more or less costs each, above 0
 * @param least grams
 * @param most grams, at least {@code least}
 */
public record Claim(int containers, double best, double weight, double least, double most) {
    public Claim {
        if (containers < 1 || !(weight > 0) || !(least <= most)) {
            throw new IllegalArgumentException("claim (" + containers + " x " + best + ", weight " + weight + ", "
                    + least + " to " + most + ") must have containers, weight above 0, and least <= most.");
        }
    }

    /** Grams of each at a price of a gram. */
    double at(double price) {
        return Math.max(least, Math.min(most, best + price / weight));
    }
}
