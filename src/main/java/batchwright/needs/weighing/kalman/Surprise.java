package batchwright.needs.weighing.kalman;

/**
 * How far a reading is from what was foreseen.
 *
 * @param value the difference
 * @param variance what it is expected to have, more than 0
 */
public record Surprise(double value, double variance) {
    private static final double LOG_2_PI = Math.log(2 * Math.PI);

    public double standardDeviations() {
        return Math.abs(value) / Math.sqrt(variance);
    }

    /** Its term of the log likelihood. */
    public double logDensity() {
        return -(LOG_2_PI + Math.log(variance) + value * value / variance) / 2;
    }
}
