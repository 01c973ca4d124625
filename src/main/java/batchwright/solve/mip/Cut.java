package batchwright.solve.mip;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A row that every point with whole columns keeps: coefficients x columns >= least. The largest coefficient is 1.
 *
 * @param coefficients by column index
 */
record Cut(double[] coefficients, double least) {
    double activity(double[] x) {
        double sum = 0;
        for (int j = 0; j < coefficients.length; j++) {
            sum += coefficients[j] * x[j];
        }
        return sum;
    }

    /** Two cuts are equal only if they are the same object. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }

    /** How far a point lies outside, as a distance. */
    double depth(double[] x) {
        return (least - activity(x)) / norm();
    }

    private double norm() {
        return Math.sqrt(Arrays.stream(coefficients).map(a -> a * a).sum());
    }

    /** 1 for a cut of the same direction, 0 for one at right angles. */
    double parallel(Cut other) {
        return activity(other.coefficients) / (norm() * other.norm());
    }
}
