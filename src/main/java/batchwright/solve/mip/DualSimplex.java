package batchwright.solve.mip;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGeneratorFactory;

/**
 * Bounded dual simplex on a dense tableau, made for models of a few hundred rows and columns that are re-solved thousands of
 * times. Changing bounds never loses dual feasibility, so that every solve starts from the last basis, wherever in the
 * search tree that was.
 *
 * <p>Each row has a logical variable equal to its activity; the tableau expresses the basic variables by the nonbasic ones:
 * x_B = T x_N. The ratio test flips boxed variables past their breakpoints (the long-step rule); ties go to the largest
 * pivot. Rows are scaled to a largest coefficient of 1.
 *
 * <p>Most columns of a plan cost nothing, and then the dual simplex can go round in circles. So it walks on costs that are
 * perturbed a little, always in the same way; the true reduced costs are carried along, and {@link #cost()} is the bound that
 * they prove, whatever the perturbation did. Where costs are not counted in steps the perturbation is taken out at the end.
 */
final class DualSimplex implements Relaxation {
    private static final double FEASIBLE = 1e-9;
    /** A row that misses by less, and that nothing can mend, misses by rounding. */
    private static final double HOPELESS = 1e-6;

    private static final double PIVOT = 1e-8;
    private static final double DUAL = 1e-9;
    /** Stands in for an infinite bound that the cost pulls towards; an optimum out there is unbounded. */
    private static final double FAR = 1e8;

    /** All columns moved over their whole range would cost about this much more each, in units of the cost. */
    private static final double PERTURBATION = 1e-4;

    /** Smaller entries of the tableau are rounding. */
    private static final double DUST = 1e-13;

    private static final double MOST_WEIGHT = 1e7;
    private static final int PIVOTS_BEFORE_CHECK = 50;
    private static final int MOST_PIVOTS_UNCHECKED = 2000;
    private static final double DRIFT = 1e-7;

    private final int n;
    private final int m;
    private final double[][] rows;
    private final int[][] rowColumns;
    private final double[][] rowValues;
    private final double[] costs;
    private final double[] perturbed;
    private final double offset;
    private final boolean exactCost;

    private final double[] lower;
    private final double[] upper;
    private final double[][] t;
    private final double[] d;
    private final double[] trueD;
    private final int[] nonbasic;
    private final int[] basic;
    private final double[] xN;
    private final double[] xB;
    private final double[] weight;
    private final boolean[] tolerated;
    private final int[] pattern;
    private final double[] reduced;
    private int filled;
    private int hopelessRow;
    private int sincePivotCheck;
    private long pivots;

    DualSimplex(MipModel model) {
        List<Row> given = model.rows();
        n = model.columns().size();
        m = given.size();
        costs = model.costs();
        offset = model.costOffset();
        exactCost = model.costStep() == 0;
        perturbed = perturbed(model);
        rows = new double[m][n];
        rowColumns = new int[m][];
        rowValues = new double[m][];
        lower = new double[n + m];
        upper = new double[n + m];
        for (int i = 0; i < m; i++) {
            Row row = given.get(i);
            double largest =
                    Arrays.stream(row.coefficients()).map(Math::abs).max().orElse(1);
            double scale = 1 / largest;
            rowColumns[i] = row.columns();
            rowValues[i] = Arrays.stream(row.coefficients()).map(a -> a * scale).toArray();
            for (int k = 0; k < row.columns().length; k++) {
                rows[i][row.columns()[k]] = rowValues[i][k];
            }
            lower[n + i] = row.lower() * scale;
            upper[n + i] = row.upper() * scale;
        }
        t = new double[m][n];
        d = new double[n];
        trueD = new double[n];
        nonbasic = new int[n];
        basic = new int[m];
        xN = new double[n];
        xB = new double[m];
        weight = new double[m];
        tolerated = new boolean[m];
        pattern = new int[n];
        reduced = new double[n];
        slackBasis();
    }

    /** Costs with a small amount added in the direction they have, different for each column, smaller for wider ranges. */
    private double[] perturbed(MipModel model) {
        var random = RandomGeneratorFactory.of("L64X128MixRandom").create(n);
        double[] moved = costs.clone();
        for (Column c : model.columns()) {
            double range = Math.min(c.upper() - c.lower(), FAR);
            double amount = PERTURBATION * (0.5 + random.nextDouble()) / Math.max(1, range);
            moved[c.index()] += Math.copySign(amount, costs[c.index()] == 0 ? 1 : costs[c.index()]);
        }
        return moved;
    }

    private void slackBasis() {
        for (int i = 0; i < m; i++) {
            System.arraycopy(rows[i], 0, t[i], 0, n);
            basic[i] = n + i;
        }
        System.arraycopy(perturbed, 0, d, 0, n);
        System.arraycopy(costs, 0, trueD, 0, n);
        for (int j = 0; j < n; j++) {
            nonbasic[j] = j;
        }
        Arrays.fill(weight, 1);
        sincePivotCheck = 0;
    }

    @Override
    public Status solve(double[] newLower, double[] newUpper) {
        if (!takeBounds(newLower, newUpper)) {
            return Status.INFEASIBLE;
        }
        Status status = settle();
        if (status == Status.OPTIMAL && drifted()) {
            refactor();
            status = settle();
        }
        if (status == Status.INFEASIBLE && !proofOfInfeasibility()) {
            slackBasis();
            status = settle();
        }
        if (status == Status.OPTIMAL && exactCost) {
            status = withoutPerturbation();
        }
        return status == Status.OPTIMAL && farOut() ? Status.UNBOUNDED : status;
    }

    @Override
    public Status glance(double[] newLower, double[] newUpper, int mostPivots) {
        if (!takeBounds(newLower, newUpper)) {
            return Status.INFEASIBLE;
        }
        placeNonbasic();
        Status status = iterate(mostPivots).orElse(Status.OPTIMAL);
        if (status == Status.INFEASIBLE || drifted()) {
            // A glance decides nothing for good.
            return solve(newLower, newUpper);
        }
        return status;
    }

    private boolean takeBounds(double[] newLower, double[] newUpper) {
        System.arraycopy(newLower, 0, lower, 0, n);
        System.arraycopy(newUpper, 0, upper, 0, n);
        for (int j = 0; j < n; j++) {
            if (lower[j] > upper[j]) {
                return false;
            }
        }
        return true;
    }

    private Status settle() {
        placeNonbasic();
        return iterate(50 * (m + n) + 1000).orElseThrow(() -> new IllegalStateException("dual simplex found no end."));
    }

    /** Goes on with the true costs, for a while: if that goes round in circles, the perturbed optimum has to do. */
    private Status withoutPerturbation() {
        System.arraycopy(trueD, 0, d, 0, n);
        placeNonbasic();
        Optional<Status> status = iterate(2 * (m + n));
        restorePerturbation();
        return status.orElseGet(this::settle);
    }

    /** The reduced costs of the perturbed costs in the present basis. */
    private void restorePerturbation() {
        double[] basicExtra = new double[m];
        double[] extra = new double[n];
        for (int j = 0; j < n; j++) {
            extra[j] = perturbed[j] - costs[j];
        }
        for (int i = 0; i < m; i++) {
            basicExtra[i] = basic[i] < n ? extra[basic[i]] : 0;
        }
        for (int j = 0; j < n; j++) {
            double sum = nonbasic[j] < n ? extra[nonbasic[j]] : 0;
            for (int i = 0; i < m; i++) {
                sum += basicExtra[i] * t[i][j];
            }
            d[j] = trueD[j] + sum;
        }
    }

    /** Every nonbasic variable to the bound that its reduced cost wants, and the basic ones to what follows. */
    private void placeNonbasic() {
        for (int j = 0; j < n; j++) {
            int k = nonbasic[j];
            boolean wantsUpper = d[j] < -DUAL || (d[j] <= DUAL && upper[k] - xN[j] < xN[j] - lower[k]);
            double value = wantsUpper ? upper[k] : lower[k];
            if (Double.isInfinite(value) && Math.abs(d[j]) <= DUAL) {
                value = Double.isInfinite(lower[k]) ? (Double.isInfinite(upper[k]) ? 0 : upper[k]) : lower[k];
            }
            xN[j] = Double.isInfinite(value) ? Math.copySign(FAR, value) : value;
        }
        computeBasic();
    }

    private void computeBasic() {
        for (int i = 0; i < m; i++) {
            double[] row = t[i];
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += row[j] * xN[j];
            }
            xB[i] = sum;
        }
    }

    /** Pivots until the point keeps all bounds, or none can; empty when the limit comes first. */
    private Optional<Status> iterate(int limit) {
        Arrays.fill(tolerated, false);
        for (int count = 0; count < limit; count++) {
            int r = leavingRow();
            if (r < 0) {
                return Optional.of(Status.OPTIMAL);
            }
            int k = basic[r];
            boolean rises = xB[r] < lower[k];
            double target = rises ? lower[k] : upper[k];
            int q = enteringColumn(r, rises, Math.abs(target - xB[r]));
            if (q < 0) {
                if (Math.abs(target - xB[r]) > HOPELESS * Math.max(1, Math.abs(target))) {
                    hopelessRow = r;
                    return Optional.of(Status.INFEASIBLE);
                }
                tolerated[r] = true;
                continue;
            }
            step(r, q, target);
        }
        return Optional.empty();
    }

    /** The basic variable furthest outside its bounds, measured by its weight; -1 when none is. */
    private int leavingRow() {
        int best = -1;
        double worst = 0;
        for (int i = 0; i < m; i++) {
            int k = basic[i];
            double miss = Math.max(lower[k] - xB[i], xB[i] - upper[k]);
            double tolerance = FEASIBLE * Math.max(1, Math.abs(xB[i]));
            if (miss > tolerance && miss * miss > worst * weight[i] && !tolerated[i]) {
                best = i;
                worst = miss * miss / weight[i];
            }
        }
        return best;
    }

    /**
     * The nonbasic variable that takes over row r. Walks the breakpoints in the order of their ratio, flipping boxed
     * variables as long as the row stays outside its bound.
     */
    private int enteringColumn(int r, boolean rises, double missing) {
        double[] row = t[r];
        double slope = missing;
        double sign = rises ? 1 : -1;
        boolean[] passed = new boolean[n];
        int[] flips = new int[n];
        int flipCount = 0;
        while (true) {
            int best = breakpoint(row, sign, passed);
            if (best < 0) {
                return -1;
            }
            int k = nonbasic[best];
            double drop = Math.abs(row[best]) * (upper[k] - lower[k]);
            if (slope - drop > HOPELESS * Math.max(1, missing)) {
                slope -= drop;
                passed[best] = true;
                flips[flipCount++] = best;
                continue;
            }
            for (int f = 0; f < flipCount; f++) {
                flip(flips[f]);
            }
            return best;
        }
    }

    /** Next breakpoint of the ratio test: the least |d/alpha|, the largest |alpha| among those about as small. */
    private int breakpoint(double[] row, double sign, boolean[] passed) {
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < n; j++) {
            if (!passed[j] && canEnter(j, sign * row[j])) {
                least = Math.min(least, (Math.abs(d[j]) + DUAL) / Math.abs(row[j]));
            }
        }
        int best = -1;
        double largest = 0;
        for (int j = 0; j < n; j++) {
            if (!passed[j]
                    && canEnter(j, sign * row[j])
                    && Math.abs(d[j]) / Math.abs(row[j]) <= least
                    && Math.abs(row[j]) > largest) {
                best = j;
                largest = Math.abs(row[j]);
            }
        }
        return best;
    }

    private boolean canEnter(int j, double alpha) {
        int k = nonbasic[j];
        if (alpha > PIVOT) {
            return xN[j] < upper[k];
        }
        return alpha < -PIVOT && xN[j] > lower[k];
    }

    private void flip(int j) {
        int k = nonbasic[j];
        double to = xN[j] == lower[k] ? upper[k] : lower[k];
        double change = to - xN[j];
        xN[j] = to;
        for (int i = 0; i < m; i++) {
            xB[i] += t[i][j] * change;
        }
    }

    /** Moves the leaving variable to its bound and lets column q take over row r. */
    private void step(int r, int q, double target) {
        double theta = (target - xB[r]) / t[r][q];
        for (int i = 0; i < m; i++) {
            xB[i] += t[i][q] * theta;
        }
        double entered = xN[q] + theta;
        xN[q] = target;
        pivot(r, q);
        xB[r] = entered;
    }

    private void pivot(int r, int q) {
        double[] pivotRow = t[r];
        double inverse = 1 / pivotRow[q];
        filled = 0;
        for (int j = 0; j < n; j++) {
            if (Math.abs(pivotRow[j]) > DUST) {
                pivotRow[j] *= -inverse;
                pattern[filled++] = j;
            } else {
                pivotRow[j] = 0;
            }
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
        sincePivotCheck++;
        pivots++;
    }

    /** Devex weights: about how fast each basic variable moves against the others, so that misses can be compared. */
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
        for (int k = 0; k < filled; k++) {
            int j = pattern[k];
            row[j] += factor * pivotRow[j];
        }
    }

    /** Whether rounding has let the tableau or the reduced costs drift from the rows and costs as given. */
    private boolean drifted() {
        if (sincePivotCheck < PIVOTS_BEFORE_CHECK) {
            return false;
        }
        if (sincePivotCheck > MOST_PIVOTS_UNCHECKED) {
            return true;
        }
        double[] all = new double[n + m];
        for (int j = 0; j < n; j++) {
            all[nonbasic[j]] = xN[j];
        }
        for (int i = 0; i < m; i++) {
            all[basic[i]] = xB[i];
        }
        for (int i = 0; i < m; i++) {
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += rows[i][j] * all[j];
            }
            if (Math.abs(sum - all[n + i]) > DRIFT * Math.max(1, Math.abs(sum))) {
                return true;
            }
        }
        double asGiven = 0;
        for (int j = 0; j < n; j++) {
            asGiven += costs[j] * all[j];
        }
        double asReduced = 0;
        for (int j = 0; j < n; j++) {
            asReduced += trueD[j] * xN[j];
        }
        return Math.abs(asGiven - asReduced) > DRIFT * Math.max(1, Math.abs(asGiven));
    }

    /** The tableau of the present basis, computed afresh from the rows as given. */
    private void refactor() {
        boolean[] wanted = new boolean[n + m];
        for (int k : basic) {
            wanted[k] = true;
        }
        double[] at = new double[n + m];
        for (int j = 0; j < n; j++) {
            at[nonbasic[j]] = xN[j];
        }
        slackBasis();
        for (int j = 0; j < n; j++) {
            if (wanted[j]) {
                int r = pivotRowFor(j, wanted);
                if (r >= 0) {
                    pivot(r, j);
                }
            }
        }
        for (int j = 0; j < n; j++) {
            xN[j] = at[nonbasic[j]];
        }
        sincePivotCheck = 0;
    }

    private int pivotRowFor(int j, boolean[] wanted) {
        int best = -1;
        double largest = 1e-8;
        for (int i = 0; i < m; i++) {
            if (basic[i] >= n && !wanted[basic[i]] && Math.abs(t[i][j]) > largest) {
                best = i;
                largest = Math.abs(t[i][j]);
            }
        }
        return best;
    }

    private boolean farOut() {
        for (int j = 0; j < n; j++) {
            if (Math.abs(xN[j]) >= FAR) {
                return true;
            }
        }
        return false;
    }

    long pivots() {
        return pivots;
    }

    /**
     * The bound that the row multipliers of this basis prove by weak duality: least cost of the Lagrangian within all bounds.
     * Worked out from the rows as given, so that it holds whatever rounding did to the tableau.
     */
    @Override
    public double cost() {
        double[] multipliers = new double[m];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] >= n) {
                multipliers[nonbasic[j] - n] = trueD[j];
            }
        }
        double sum = offset;
        System.arraycopy(costs, 0, reduced, 0, n);
        for (int i = 0; i < m; i++) {
            if (multipliers[i] != 0) {
                addRow(reduced, i, -multipliers[i]);
                sum += least(n + i, multipliers[i]);
            }
        }
        for (int j = 0; j < n; j++) {
            sum += least(j, reduced[j]);
        }
        return sum;
    }

    private void addRow(double[] to, int i, double factor) {
        int[] columns = rowColumns[i];
        double[] values = rowValues[i];
        for (int k = 0; k < columns.length; k++) {
            to[columns[k]] += factor * values[k];
        }
    }

    /** Least value of factor x variable within the variable's bounds. */
    private double least(int k, double factor) {
        if (factor == 0) {
            return 0;
        }
        double at = factor > 0 ? leastOf(k) : mostOf(k);
        // A free column with a reduced cost that is only rounding must not make the bound worthless.
        return Double.isInfinite(at) && Math.abs(factor) <= DUAL ? 0 : factor * at;
    }

    /**
     * Whether the row that could not be mended proves that nothing keeps all bounds: its combination of the rows as given has
     * no value in common with what the columns allow.
     */
    private boolean proofOfInfeasibility() {
        double[] row = t[hopelessRow];
        double[] multipliers = new double[m];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] >= n) {
                multipliers[nonbasic[j] - n] = -row[j];
            }
        }
        if (basic[hopelessRow] >= n) {
            multipliers[basic[hopelessRow] - n] += 1;
        }
        double[] combined = new double[n];
        double least = 0;
        double most = 0;
        for (int i = 0; i < m; i++) {
            if (multipliers[i] != 0) {
                addRow(combined, i, -multipliers[i]);
                least += least(n + i, multipliers[i]);
                most -= least(n + i, -multipliers[i]);
            }
        }
        for (int j = 0; j < n; j++) {
            least += least(j, combined[j]);
            most -= least(j, -combined[j]);
        }
        // The combination is zero for every point, so zero must be within reach.
        double size = HOPELESS / 10;
        return least > size || most < -size;
    }

    private double leastOf(int k) {
        return Double.isInfinite(lower[k]) && k >= n ? activity(k - n, -1) : lower[k];
    }

    private double mostOf(int k) {
        return Double.isInfinite(upper[k]) && k >= n ? activity(k - n, 1) : upper[k];
    }

    /** The least (sign -1) or largest (sign +1) activity of a row within the bounds of its columns. */
    private double activity(int i, int sign) {
        double sum = 0;
        for (int k = 0; k < rowColumns[i].length; k++) {
            int j = rowColumns[i][k];
            double a = rowValues[i][k];
            sum += a * (a * sign > 0 ? upper[j] : lower[j]);
        }
        return sum;
    }

    @Override
    public double[] values() {
        var x = new double[n];
        for (int j = 0; j < n; j++) {
            if (nonbasic[j] < n) {
                x[nonbasic[j]] = xN[j];
            }
        }
        for (int i = 0; i < m; i++) {
            if (basic[i] < n) {
                // A miss within the tolerance must not look like a fraction beyond the bound.
                x[basic[i]] = Math.max(lower[basic[i]], Math.min(upper[basic[i]], xB[i]));
            }
        }
        return x;
    }

    @Override
    public double[] reducedCosts() {
        return reduced.clone();
    }
}
