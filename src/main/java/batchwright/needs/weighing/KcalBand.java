package batchwright.needs.weighing;

import batchwright.needs.total.TotalRange;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * An energy a day and how sure it is [kcal]; the band holds the truth in 8 cases of 10.
 *
 * @param sd standard deviation
 */
public record KcalBand(double likely, double sd) {
    /** Standard deviations from the middle of a normal distribution to the end of the band. */
    static final double Z =
            new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + TotalRange.COVERAGE) / 2);

    /** No finer than it is known; a choice. */
    private static final double ROUNDED = 50;

    public double least() {
        return likely - Z * sd;
    }

    public double most() {
        return likely + Z * sd;
    }

    public boolean holds(double kcal) {
        return least() <= kcal && kcal <= most();
    }

    /** To the nearest 50 kcal. */
    public static long rounded(double kcal) {
        return Math.round(Math.round(kcal / ROUNDED) * ROUNDED);
    }
}
