package batchwright.solve.mip;

import java.util.Arrays;

/**
 * A dense simplex tableau: the basic variables and the costs, written in the nonbasic ones (x_B = T x_N). Knows the basis and
 * how to change it, but no bounds and no values.
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
    final int m;
    /** Entry [i][j]: how basic variable i changes with nonbasic variable j. */
    final double[][] t;
    /** Reduced costs of the nonbasic variables. */
    final double[] d;

    final double[] trueD;
    /** Which variable is nonbasic in each column, and basic in each row. */
    final int[] nonbasic;

    final int[] basic;
    /** Devex weights: about how fast each basic variable moves against the others, so that misses can be compared. */
    final double[] weight;

    private final GivenRows rows;
    private final double[] costs;
    private final double[] trueCosts;
    private int pivots;

    Tableau(GivenRows rows, double[] costs, double[] trueCosts) {
        this.rows = rows;
        this.costs = costs;
        this.trueCosts = trueCosts;
        n = costs.length;
        m = rows.count();
        t = new double[m][n];
        d = new double[n];
        trueD = new double[n];
        nonbasic = new int[n];
        basic = new int[m];
        weight = new double[m];
        reset();
    }

    /**
     * The tableau of another model with the same columns and costs, in the same basis.
     *
     * @param from the other one
     * @param rowOf for each row of this model, its number in the other; -1 for a new one, whose own variable becomes basic. A row
     *     of the other model may be left out when its own variable is basic there.
     */
    Tableau(GivenRows rows, Tableau from, int[] rowOf) {
        this(rows, from.costs, from.trueCosts);
        int[] newRow = new int[from.m];
        Arrays.fill(newRow, -1);
        for (int i = 0; i < m; i++) {
            if (rowOf[i] >= 0) {
                newRow[rowOf[i]] = i;
            }
        }
        for (int j = 0; j < n; j++) {
            int k = from.nonbasic[j];
            nonbasic[j] = k < n ? k : n + newRow[k - n];
        }
        System.arraycopy(from.d, 0, d, 0, n);
        System.arraycopy(from.trueD, 0, trueD, 0, n);
        int at = 0;
        int[] lineOf = new int[n];
        Arrays.fill(lineOf, -1);
        for (int r = 0; r < from.m; r++) {
            int k = from.basic[r];
            if (k < n || newRow[k - n] >= 0) {
                System.arraycopy(from.t[r], 0, t[at], 0, n);
                weight[at] = from.weight[r];
                basic[at] = k < n ? k : n + newRow[k - n];
                if (k < n) {
                    lineOf[k] = at;
                }
                at++;
            }
        }
        for (int i = 0; i < m; i++) {
            if (rowOf[i] < 0) {
                express(i, lineOf, t[at]);
                basic[at] = n + i;
                at++;
            }
        }
        pivots = from.pivots;
    }

    /** Writes a row in the nonbasic variables. */
    private void express(int i, int[] lineOf, double[] line) {
        double[] given = new double[n];
        rows.add(i, 1, given);
        Arrays.fill(line, 0);
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] < n) {
                line[j] = given[nonbasic[j]];
            }
        }
        for (int k = 0; k < n; k++) {
            if (given[k] != 0 && lineOf[k] >= 0) {
                for (int j = 0; j < n; j++) {
                    line[j] += given[k] * t[lineOf[k]][j];
                }
            }
        }
    }

    /** Every row's own variable basic: the tableau is the rows as given. */
    void reset() {
        for (int i = 0; i < m; i++) {
            Arrays.fill(t[i], 0);
            rows.add(i, 1, t[i]);
            basic[i] = n + i;
        }
        System.arraycopy(costs, 0, d, 0, n);
        System.arraycopy(trueCosts, 0, trueD, 0, n);
        for (int j = 0; j < n; j++) {
            nonbasic[j] = j;
        }
        Arrays.fill(weight, 1);
        pivots = 0;
    }

    /** Pivots since the tableau was last built from the rows as given. */
    int pivots() {
        return pivots;
    }

    /** Nonbasic variable q takes over row r. */
    void pivot(int r, int q) {
        double[] pivotRow = t[r];
        double inverse = 1 / pivotRow[q];
        for (int j = 0; j < n; j++) {
            pivotRow[j] = Math.abs(pivotRow[j]) > DUST ? -inverse * pivotRow[j] : 0;
        }
        pivotRow[q] = inverse;
        weigh(r, q, inverse);
        for (int i = 0; i < m; i++) {
            if (i != r) {
                eliminate(t[i], pivotRow, q);
            }
        }
        eliminate(d, pivotRow, q);
        eliminate(trueD, pivotRow, q);
        int leaving = basic[r];
        basic[r] = nonbasic[q];
        nonbasic[q] = leaving;
        pivots++;
    }

    private void weigh(int r, int q, double inverse) {
        double leavingWeight = weight[r];
        for (int i = 0; i < m; i++) {
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
        boolean[] wanted = new boolean[n + m];
        for (int k : basic) {
            wanted[k] = true;
        }
        reset();
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
        int best = -1;
        double largest = LEAST_PIVOT;
        for (int i = 0; i < m; i++) {
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
        for (int j = 0; j < n; j++) {
            double sum = extra(nonbasic[j]);
            for (int i = 0; i < m; i++) {
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
        double[] multipliers = new double[m];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] >= n) {
                multipliers[nonbasic[j] - n] = trueD[j];
            }
        }
        return multipliers;
    }

    /** The multipliers with which row r of the tableau combines the rows as given. */
    double[] multipliersOfRow(int r) {
        double[] multipliers = new double[m];
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
