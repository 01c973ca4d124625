package batchwright.solve.mip;

import java.util.Arrays;
import java.util.List;

/**
 * The rows of a model as they were given, each scaled to a largest coefficient of 1, and what they prove. A bound or an
 * infeasibility is worked out from here and from row multipliers alone, so that it holds whatever rounding did to the tableau
 * that the multipliers came from.
 *
 * <p>Variables are numbered columns first, then one for each row, equal to its activity.
 */
final class GivenRows {
    /** A factor of an infinite bound that is no larger is rounding: it must not make a bound worthless. */
    private static final double ROUNDING = 1e-9;

    /** A combination of rows that must be zero, but cannot come closer than this, is a contradiction. */
    private static final double CONTRADICTION = 1e-7;

    private final int n;
    private final int[][] columns;
    private final double[][] values;
    private final double[] rowLower;
    private final double[] rowUpper;
    private final long size;

    GivenRows(MipModel model) {
        List<Row> given = model.rows();
        n = model.columns().size();
        columns = new int[given.size()][];
        values = new double[given.size()][];
        rowLower = new double[given.size()];
        rowUpper = new double[given.size()];
        for (int i = 0; i < given.size(); i++) {
            Row row = given.get(i);
            double largest =
                    Arrays.stream(row.coefficients()).map(Math::abs).max().orElse(1);
            double scale = 1 / largest;
            columns[i] = row.columns();
            values[i] = Arrays.stream(row.coefficients()).map(a -> a * scale).toArray();
            rowLower[i] = row.lower() * scale;
            rowUpper[i] = row.upper() * scale;
        }
        size = n
                + given.size()
                + Arrays.stream(columns).mapToLong(row -> row.length).sum();
    }

    int count() {
        return columns.length;
    }

    /** About how many numbers are looked at in going once through all rows. */
    long size() {
        return size;
    }

    double lower(int i) {
        return rowLower[i];
    }

    double upper(int i) {
        return rowUpper[i];
    }

    /** Adds a multiple of a row to a dense vector of column coefficients. */
    void add(int i, double factor, double[] to) {
        for (int k = 0; k < columns[i].length; k++) {
            to[columns[i][k]] += factor * values[i][k];
        }
    }

    double activity(int i, double[] x) {
        double sum = 0;
        for (int k = 0; k < columns[i].length; k++) {
            sum += values[i][k] * x[columns[i][k]];
        }
        return sum;
    }

    /**
     * The bound that row multipliers prove by weak duality: the least value, within all bounds, of the cost plus multipliers x
     * (activity - row).
     *
     * @param reduced holds the costs of the columns; becomes their reduced costs
     */
    double bound(double[] multipliers, double[] reduced, double[] lower, double[] upper) {
        double sum = 0;
        for (int i = 0; i < count(); i++) {
            if (multipliers[i] != 0) {
                add(i, -multipliers[i], reduced);
                sum += least(n + i, multipliers[i], lower, upper);
            }
        }
        for (int j = 0; j < n; j++) {
            sum += least(j, reduced[j], lower, upper);
        }
        return sum;
    }

    /** Whether these multipliers combine the rows to something that is zero for every point, but cannot be within all bounds. */
    boolean contradict(double[] multipliers, double[] lower, double[] upper) {
        double[] opposite = Arrays.stream(multipliers).map(a -> -a).toArray();
        return bound(multipliers, new double[n], lower, upper) > CONTRADICTION
                || bound(opposite, new double[n], lower, upper) > CONTRADICTION;
    }

    /** Least value of factor x variable within the variable's bounds. */
    private double least(int k, double factor, double[] lower, double[] upper) {
        if (factor == 0) {
            return 0;
        }
        double at = factor > 0 ? lower[k] : upper[k];
        if (Double.isInfinite(at) && k >= n) {
            at = extreme(k - n, factor > 0 ? -1 : 1, lower, upper);
        }
        return Double.isInfinite(at) && Math.abs(factor) <= ROUNDING ? 0 : factor * at;
    }

    /** The least (sign -1) or largest (sign +1) activity of a row within the bounds of its columns. */
    private double extreme(int i, int sign, double[] lower, double[] upper) {
        double sum = 0;
        for (int k = 0; k < columns[i].length; k++) {
            double a = values[i][k];
            int j = columns[i][k];
            sum += a * (a * sign > 0 ? upper[j] : lower[j]);
        }
        return sum;
    }
}
