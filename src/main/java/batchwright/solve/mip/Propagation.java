package batchwright.solve.mip;

import java.util.Arrays;
import java.util.List;

/**
 * Tightens column bounds by what the rows imply: if all other columns do their utmost, how far must (or may) this one go? Whole
 * columns are rounded inwards, and that is where it sees more than the relaxation.
 */
final class Propagation {
    private static final double WHOLE = 1e-6;
    /** A continuous bound moves only for a gain worth another look at the rows. */
    private static final double WORTHWHILE = 0.05;

    private static final double SLACK = 1e-7;
    private static final int MOST_VISITS_PER_ROW = 12;

    private final List<Row> rows;
    private final boolean[] whole;
    private final int[][] rowsOf;
    /** Rows to look at, a ring: each is in it once at most. */
    private final int[] queue;

    private int first;
    private int waiting;
    private final boolean[] queued;
    private final int[] visits;

    private final Stop stop;
    private double[] lower = {};
    private double[] upper = {};

    /** @param stop told of all work */
    Propagation(MipModel model, Stop stop) {
        this.stop = stop;
        rows = model.rows();
        int n = model.columns().size();
        whole = new boolean[n];
        for (Column c : model.columns()) {
            whole[c.index()] = c.whole();
        }
        rowsOf = rowsOf(rows, n);
        queue = new int[rows.size()];
        queued = new boolean[rows.size()];
        visits = new int[rows.size()];
    }

    private static int[][] rowsOf(List<Row> rows, int n) {
        int[] count = new int[n];
        rows.forEach(row -> Arrays.stream(row.columns()).forEach(j -> count[j]++));
        int[][] rowsOf = Arrays.stream(count).mapToObj(int[]::new).toArray(int[][]::new);
        for (int i = rows.size() - 1; i >= 0; i--) {
            for (int j : rows.get(i).columns()) {
                rowsOf[j][--count[j]] = i;
            }
        }
        return rowsOf;
    }

    /** Tightens all bounds in place; false when they cannot all hold. */
    boolean all(double[] lows, double[] ups) {
        start(lows, ups);
        for (int i = 0; i < rows.size(); i++) {
            enqueue(i);
        }
        return run();
    }

    /** Tightens in place what follows from a changed bound of one column; false when the bounds cannot all hold. */
    boolean from(int column, double[] lows, double[] ups) {
        start(lows, ups);
        enqueueRowsOf(column);
        return run();
    }

    private void start(double[] lows, double[] ups) {
        stop.spend(rows.size());
        lower = lows;
        upper = ups;
        Arrays.fill(visits, 0);
    }

    private void enqueue(int row) {
        if (!queued[row] && visits[row] < MOST_VISITS_PER_ROW) {
            queued[row] = true;
            queue[(first + waiting) % queue.length] = row;
            waiting++;
        }
    }

    private void enqueueRowsOf(int column) {
        for (int row : rowsOf[column]) {
            enqueue(row);
        }
    }

    private boolean run() {
        boolean possible = true;
        while (waiting > 0) {
            int i = queue[first];
            first = (first + 1) % queue.length;
            waiting--;
            queued[i] = false;
            visits[i]++;
            possible = possible && tighten(rows.get(i));
        }
        return possible;
    }

    private boolean tighten(Row row) {
        double least = 0;
        double most = 0;
        int[] columns = row.columns();
        stop.spend(2L * columns.length);
        double[] a = row.coefficients();
        for (int k = 0; k < columns.length; k++) {
            least += a[k] * (a[k] > 0 ? lower[columns[k]] : upper[columns[k]]);
            most += a[k] * (a[k] > 0 ? upper[columns[k]] : lower[columns[k]]);
        }
        double slack = SLACK * Math.max(1, Math.max(Math.abs(row.lower()), Math.abs(row.upper())));
        if (Double.isInfinite(slack)) {
            slack = SLACK * Math.max(1, Math.abs(Double.isInfinite(row.lower()) ? row.upper() : row.lower()));
        }
        if (least > row.upper() + 10 * slack || most < row.lower() - 10 * slack) {
            return false;
        }
        for (int k = 0; k < columns.length; k++) {
            if (!tighten(row, k, least, most, slack)) {
                return false;
            }
        }
        return true;
    }

    private boolean tighten(Row row, int k, double least, double most, double slack) {
        int j = row.columns()[k];
        double a = row.coefficients()[k];
        double low = lower[j];
        double up = upper[j];
        if (low == up) {
            return true;
        }
        double othersLeast = least - a * (a > 0 ? low : up);
        double othersMost = most - a * (a > 0 ? up : low);
        double fromUpper = (row.upper() + slack - othersLeast) / a;
        double fromLower = (row.lower() - slack - othersMost) / a;
        double newUp = a > 0 ? fromUpper : fromLower;
        double newLow = a > 0 ? fromLower : fromUpper;
        if (whole[j]) {
            newUp = Double.isFinite(newUp) ? Math.floor(newUp + WHOLE) : newUp;
            newLow = Double.isFinite(newLow) ? Math.ceil(newLow - WHOLE) : newLow;
        }
        double gain = whole[j] ? 0.5 : WORTHWHILE * Math.max(1e-3, Double.isFinite(up - low) ? up - low : 1);
        boolean changed = false;
        if (newUp < up - gain) {
            upper[j] = newUp;
            changed = true;
        }
        if (newLow > low + gain) {
            lower[j] = newLow;
            changed = true;
        }
        if (lower[j] > upper[j]) {
            if (lower[j] > upper[j] + 10 * slack) {
                return false;
            }
            lower[j] = upper[j];
        }
        if (changed) {
            enqueueRowsOf(j);
        }
        return true;
    }
}
