package batchwright.solve.mip;

import java.util.Arrays;

/**
 * A dense simplex tableau: the basic variables and the costs, written in the nonbasic ones (x_B = T x_N). Knows the basis and
 * how to change it, but no bounds and no values.
 *
 * <p>Most rows of a plan are idle most of the time, and a line for each would cost more than all else. So a row has a line only
 * once it was {@linkplain #takeIn taken in}; of a row left out, the own variable is basic.
 *
 * <p>It carries two lines of reduced costs through every pivot: of the costs to walk on, and of the true costs.
 */
final class Tableau {
    /** Smaller entries are rounding. */
    private static final double DUST = 1e-13;

    /** Smaller pivots are not trusted when the tableau is built anew. */
    private static final double LEAST_PIVOT = 1e-8;

    private static final double MOST_WEIGHT = 1e7;

    final int n;
    /** Entry [i][j]: how the basic variable of line i changes with nonbasic variable j. */
    final double[][] t;

    final int[] basic;
    /** Devex weights: about how fast each basic variable moves against the others, so that misses can be compared. */
    final double[] weight;
    /** Reduced costs of the nonbasic variables. */
    final double[] d;

    final double[] trueD;
    /** Which variable is nonbasic in each column. */
    final int[] nonbasic;

    private final boolean[] held;
    private final int[] lineOf;
    private int lines;
    private final GivenRows rows;
    private final double[] costs;
    private final double[] trueCosts;
    private final Stop stop;
    private int pivots;

    /** @param stop told of all work */
    Tableau(GivenRows rows, double[] costs, double[] trueCosts, Stop stop) {
        this.rows = rows;
        this.costs = costs;
        this.trueCosts = trueCosts;
        this.stop = stop;
        n = costs.length;
        t = new double[rows.count()][];
        basic = new int[rows.count()];
        weight = new double[rows.count()];
        held = new boolean[rows.count()];
        d = new double[n];
        trueD = new double[n];
        nonbasic = new int[n];
        lineOf = new int[n];
        reset();
    }

    /**
     * The tableau of another model with the same columns and costs, in the same basis.
     *
     * @param from the other one
     * @param rowOf for each row of this model, its number in the other; -1 for a new one, whose own variable is basic. A row of
     *     the other model may be missing when its own variable is basic there.
     */
    Tableau(GivenRows rows, Tableau from, int[] rowOf) {
        this(rows, from.costs, from.trueCosts, from.stop);
        int[] newRow = new int[from.held.length];
        Arrays.fill(newRow, -1);
        for (int i = 0; i < rowOf.length; i++) {
            if (rowOf[i] >= 0) {
                newRow[rowOf[i]] = i;
                held[i] = from.held[rowOf[i]];
            }
        }
        for (int j = 0; j < n; j++) {
            int k = from.nonbasic[j];
            nonbasic[j] = k < n ? k : n + newRow[k - n];
        }
        System.arraycopy(from.d, 0, d, 0, n);
        System.arraycopy(from.trueD, 0, trueD, 0, n);
        Arrays.fill(lineOf, -1);
        for (int r = 0; r < from.lines; r++) {
            int k = from.basic[r];
            stop.spend(n);
            if (k < n || newRow[k - n] >= 0) {
                t[lines] = from.t[r].clone();
                weight[lines] = from.weight[r];
                become(lines, k < n ? k : n + newRow[k - n]);
                lines++;
            }
        }
        pivots = from.pivots;
    }

    /** How many lines there are: one for each row that was taken in. */
    int lines() {
        return lines;
    }

    /** Whether a row has a line. */
    boolean holds(int row) {
        return held[row];
    }

    /** Gives a row that was left out the last line. */
    void takeIn(int row) {
        stop.spend(2L * n);
        double[] given = new double[n];
        rows.add(row, 1, given);
        double[] line = new double[n];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] < n) {
                line[j] = given[nonbasic[j]];
            }
        }
        for (int k = 0; k < n; k++) {
            if (given[k] != 0 && lineOf[k] >= 0) {
                stop.spend(n);
                double[] other = t[lineOf[k]];
                for (int j = 0; j < n; j++) {
                    line[j] += given[k] * other[j];
                }
            }
        }
        t[lines] = line;
        weight[lines] = 1;
        basic[lines] = n + row;
        held[row] = true;
        lines++;
    }

    /** Leaves out the row whose own variable is basic in a line; the last line takes that place. */
    void leaveOut(int line) {
        held[basic[line] - n] = false;
        lines--;
        t[line] = t[lines];
        weight[line] = weight[lines];
        become(line, basic[lines]);
    }

    private void become(int line, int variable) {
        basic[line] = variable;
        if (variable < n) {
            lineOf[variable] = line;
        }
    }

    /** Every row's own variable basic, and all rows left out. */
    void reset() {
        lines = 0;
        Arrays.fill(held, false);
        Arrays.fill(lineOf, -1);
        System.arraycopy(costs, 0, d, 0, n);
        System.arraycopy(trueCosts, 0, trueD, 0, n);
        for (int j = 0; j < n; j++) {
            nonbasic[j] = j;
        }
        pivots = 0;
    }

    /** Pivots since the tableau was last built from the rows as given. */
    int pivots() {
        return pivots;
    }

    /** Nonbasic variable q takes over line r. */
    void pivot(int r, int q) {
        stop.spend((long) n * (lines + 2));
        double[] pivotRow = t[r];
        double inverse = 1 / pivotRow[q];
        for (int j = 0; j < n; j++) {
            pivotRow[j] = Math.abs(pivotRow[j]) > DUST ? -inverse * pivotRow[j] : 0;
        }
        pivotRow[q] = inverse;
        weigh(r, q, inverse);
        for (int i = 0; i < lines; i++) {
            if (i != r) {
                eliminate(t[i], pivotRow, q);
            }
        }
        eliminate(d, pivotRow, q);
        eliminate(trueD, pivotRow, q);
        int leaving = basic[r];
        become(r, nonbasic[q]);
        nonbasic[q] = leaving;
        if (leaving < n) {
            lineOf[leaving] = -1;
        }
        pivots++;
    }

    private void weigh(int r, int q, double inverse) {
        double leavingWeight = weight[r];
        for (int i = 0; i < lines; i++) {
            double ratio = t[i][q] * inverse;
            if (i != r && ratio != 0) {
                weight[i] = Math.max(weight[i], ratio * ratio * leavingWeight);
            }
        }
        weight[r] = Math.max(leavingWeight * inverse * inverse, 1);
        if (weight[r] > MOST_WEIGHT) {
            Arrays.fill(weight, 1);
        }
    }

    private void eliminate(double[] row, double[] pivotRow, int q) {
        double factor = row[q];
        if (factor == 0) {
            return;
        }
        row[q] = 0;
        // Without regard to zeros: a plain loop over few hundred numbers is what a processor does best.
        for (int j = 0; j < row.length; j++) {
            row[j] += factor * pivotRow[j];
        }
    }

    /** The same basis, computed afresh from the rows as given. */
    void rebuild() {
        boolean[] wanted = new boolean[n + held.length];
        for (int i = 0; i < lines; i++) {
            wanted[basic[i]] = true;
        }
        boolean[] before = held.clone();
        reset();
        for (int i = 0; i < before.length; i++) {
            if (before[i]) {
                takeIn(i);
            }
        }
        for (int j = 0; j < n; j++) {
            if (wanted[j]) {
                int r = rowFor(j, wanted);
                if (r >= 0) {
                    pivot(r, j);
                }
            }
        }
        pivots = 0;
    }

    private int rowFor(int j, boolean[] wanted) {
        stop.spend(lines);
        int best = -1;
        double largest = LEAST_PIVOT;
        for (int i = 0; i < lines; i++) {
            if (basic[i] >= n && !wanted[basic[i]] && Math.abs(t[i][j]) > largest) {
                best = i;
                largest = Math.abs(t[i][j]);
            }
        }
        return best;
    }

    /** From here on the true costs are walked on, until {@link #walkOnGivenCosts}. */
    void walkOnTrueCosts() {
        System.arraycopy(trueD, 0, d, 0, n);
    }

    /** The reduced costs of the costs to walk on, in the present basis. */
    void walkOnGivenCosts() {
        stop.spend((long) n * lines);
        for (int j = 0; j < n; j++) {
            double sum = extra(nonbasic[j]);
            for (int i = 0; i < lines; i++) {
                sum += extra(basic[i]) * t[i][j];
            }
            d[j] = trueD[j] + sum;
        }
    }

    private double extra(int k) {
        return k < n ? costs[k] - trueCosts[k] : 0;
    }

    /** The true costs' row multipliers in this basis. */
    double[] multipliers() {
        double[] multipliers = new double[held.length];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] >= n) {
                multipliers[nonbasic[j] - n] = trueD[j];
            }
        }
        return multipliers;
    }

    /** The multipliers with which line r combines the rows as given. */
    double[] multipliersOfRow(int r) {
        double[] multipliers = new double[held.length];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] >= n) {
                multipliers[nonbasic[j] - n] = -t[r][j];
            }
        }
        if (basic[r] >= n) {
            multipliers[basic[r] - n] += 1;
        }
        return multipliers;
    }
}
