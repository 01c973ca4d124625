package batchwright.solve.mip;

import batchwright.solve.mip.DualSimplex.Optimum;
import java.util.List;
import java.util.Optional;

/**
 * Derives one mixed-integer cut (Gomory 1960) from a combination of rows in which a fractional whole column is the only basic
 * variable. The combination is worked out from the rows as given, so rounding in the tableau can make a cut weak but not wrong;
 * what is too small to matter is let out of the cut at its worst.
 */
final class GomoryCut {
    /** A fraction closer to a whole number makes a cut of large coefficients. */
    private static final double LEAST_FRACTION = 0.01;

    /** A coefficient that should be zero and is larger than this: the combination is no good. */
    private static final double ROUNDING = 1e-9;

    private static final double LEAST_COEFFICIENT = 1e-7;
    private static final double LEAST_PIVOT = 1e-6;
    /** Part of its right side by which every cut is let out. */
    private static final double LET_OUT = 1e-7;

    private final Optimum at;
    private final List<Column> columns;
    private final int n;
    /** Of the shifted variables, all at least 0, in the combination; 0 for those that are fixed or negligible. */
    private final double[] combined;

    private final boolean[] fromUpper;
    /** Right side of the combination: the fractional column plus all others is this. */
    private double right;
    /** By how much what was neglected can change the right side. */
    private double neglected;

    private GomoryCut(Optimum at, List<Column> columns) {
        this.at = at;
        this.columns = columns;
        this.n = columns.size();
        this.combined = new double[at.values().length];
        this.fromUpper = new boolean[at.values().length];
    }

    /**
     * The cut of one fractional column; empty when the numbers would not make a sound one.
     *
     * @param multipliers of the rows as given
     */
    static Optional<Cut> of(Optimum at, List<Column> columns, Column fractional, double[] multipliers) {
        var cut = new GomoryCut(at, columns);
        return cut.combine(fractional.index(), multipliers) ? cut.rounded() : Optional.empty();
    }

    /** The combination, solved for the fractional column, every other variable shifted to its distance from a bound. */
    private boolean combine(int fractional, double[] multipliers) {
        double[] row = new double[n];
        for (int i = 0; i < multipliers.length; i++) {
            if (multipliers[i] != 0) {
                at.rows().add(i, multipliers[i], row);
            }
        }
        double pivot = row[fractional];
        if (Math.abs(pivot) < LEAST_PIVOT) {
            return false;
        }
        for (int k = 0; k < combined.length; k++) {
            double coefficient = (k < n ? row[k] : -multipliers[k - n]) / pivot;
            if (k != fractional && coefficient != 0 && !shift(k, coefficient)) {
                return false;
            }
        }
        return neglected < 10 * ROUNDING;
    }

    private boolean shift(int k, double coefficient) {
        double low = at.lower()[k];
        double up = at.upper()[k];
        if (low == up) {
            right -= coefficient * low;
            return true;
        }
        if (at.basic()[k]) {
            neglected += Math.abs(coefficient) * Math.max(Math.abs(low), Math.abs(up));
            return Math.abs(coefficient) < ROUNDING && Double.isFinite(neglected);
        }
        fromUpper[k] = up - at.values()[k] < at.values()[k] - low;
        double bound = fromUpper[k] ? up : low;
        combined[k] = fromUpper[k] ? -coefficient : coefficient;
        right -= coefficient * bound;
        return Double.isFinite(bound);
    }

    /** What wholeness makes of the combination: the sum of the rounded distances is at least 1. */
    private Optional<Cut> rounded() {
        double fraction = right - Math.floor(right);
        if (fraction < LEAST_FRACTION || fraction > 1 - LEAST_FRACTION) {
            return Optional.empty();
        }
        double[] coefficients = new double[n];
        double least = 1 - neglected / Math.min(fraction, 1 - fraction);
        for (int k = 0; k < combined.length; k++) {
            if (combined[k] != 0) {
                double factor = k < n && columns.get(k).whole()
                        ? ofWhole(combined[k], fraction)
                        : combined[k] > 0 ? combined[k] / fraction : -combined[k] / (1 - fraction);
                double signed = fromUpper[k] ? -factor : factor;
                least += signed * (fromUpper[k] ? at.upper()[k] : at.lower()[k]);
                if (k < n) {
                    coefficients[k] += signed;
                } else {
                    at.rows().add(k - n, signed, coefficients);
                }
            }
        }
        return scaled(coefficients, least);
    }

    private static double ofWhole(double coefficient, double fraction) {
        double f = coefficient - Math.floor(coefficient);
        return f <= fraction ? f / fraction : (1 - f) / (1 - fraction);
    }

    private Optional<Cut> scaled(double[] coefficients, double least) {
        double largest = 0;
        for (double a : coefficients) {
            largest = Math.max(largest, Math.abs(a));
        }
        if (largest == 0) {
            return Optional.empty();
        }
        double rest = least / largest;
        for (int j = 0; j < n; j++) {
            coefficients[j] /= largest;
            if (coefficients[j] != 0 && Math.abs(coefficients[j]) < LEAST_COEFFICIENT) {
                rest -= coefficients[j] * (coefficients[j] > 0 ? at.upper()[j] : at.lower()[j]);
                coefficients[j] = 0;
            }
        }
        return Double.isFinite(rest)
                ? Optional.of(new Cut(coefficients, rest - LET_OUT * Math.max(1, Math.abs(rest))))
                : Optional.empty();
    }
}
