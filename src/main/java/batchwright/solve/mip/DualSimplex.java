package batchwright.solve.mip;

import java.util.Arrays;
import java.util.Optional;
import java.util.random.RandomGeneratorFactory;

/**
 * Bounded dual simplex on a dense {@link Tableau}, made for models of a few hundred rows and columns that are re-solved
 * thousands of times. Changing bounds never loses dual feasibility, so that every solve starts from the last basis, wherever in
 * the search tree that was.
 *
 * <p>Most columns of a plan cost nothing, and then the dual simplex can go round in circles. So it walks on costs that are
 * perturbed a little, always in the same way; {@link #cost()} is the bound that the true costs prove, whatever the perturbation
 * did. Where costs are not counted in steps the perturbation is taken out at the end.
 */
final class DualSimplex implements Relaxation {
    private static final double FEASIBLE = 1e-9;
    /** A row that misses by less, and that nothing can mend, misses by rounding. */
    static final double HOPELESS = 1e-6;

    static final double DUAL = 1e-9;
    /** Stands in for an infinite bound that the cost pulls towards; an optimum out there is unbounded. */
    private static final double FAR = 1e8;

    /** All columns moved over their whole range would cost about this much more each, in units of the cost. */
    private static final double PERTURBATION = 1e-4;

    private static final int PIVOTS_BEFORE_CHECK = 50;
    private static final int MOST_PIVOTS_UNCHECKED = 2000;
    private static final double DRIFT = 1e-7;
    private static final int MOST_REBUILDS = 5;

    /** A row that was idle in this many solves is left out until a point breaks it. */
    private static final int IDLE = 2;

    private final int n;
    private final int m;
    private final GivenRows rows;
    private final Tableau tableau;
    private final double[] costs;
    private final double offset;
    private final boolean exactCost;

    private final double[] lower;
    private final double[] upper;
    private final double[] xN;
    private final double[] xB;
    private final boolean[] tolerated;
    private final int[] idleFor;
    private final double[] reduced;
    private final RatioTest ratioTest;
    private final Stop stop;
    private int hopelessRow;

    /** @param stop told of all work */
    DualSimplex(MipModel model, Stop stop) {
        this(model, new GivenRows(model), Optional.empty(), new int[0], stop);
    }

    /**
     * Goes on from the last optimum of a model that has the same columns and cost, but other rows.
     *
     * @param rowOf for each row of the model, its number in the former one; -1 for a new one. Only rows that are idle in the
     *     optimum may be left out.
     */
    DualSimplex(MipModel model, DualSimplex former, int[] rowOf) {
        this(model, new GivenRows(model), Optional.of(former), rowOf, former.stop);
    }

    private DualSimplex(MipModel model, GivenRows rows, Optional<DualSimplex> former, int[] rowOf, Stop stop) {
        this.rows = rows;
        this.stop = stop;
        n = model.columns().size();
        m = rows.count();
        costs = model.costs();
        offset = model.costOffset();
        exactCost = model.costStep() == 0;
        tableau = former.map(f -> new Tableau(rows, f.tableau, rowOf))
                .orElseGet(() -> new Tableau(rows, perturbed(model), costs, stop));
        lower = new double[n + m];
        upper = new double[n + m];
        for (int i = 0; i < m; i++) {
            lower[n + i] = rows.lower(i);
            upper[n + i] = rows.upper(i);
        }
        xN = former.map(f -> f.xN.clone()).orElseGet(() -> new double[n]);
        xB = new double[m];
        tolerated = new boolean[m];
        idleFor = new int[m];
        reduced = new double[n];
        ratioTest = new RatioTest(tableau, xN, lower, upper, stop);
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

    @Override
    public Status solve(double[] newLower, double[] newUpper) {
        if (!takeBounds(newLower, newUpper)) {
            return Status.INFEASIBLE;
        }
        Status status = settle();
        if (status == Status.OPTIMAL && drifted()) {
            rebuild();
            status = settle();
        }
        if (status == Status.INFEASIBLE && !provenInfeasible()) {
            status = settleAnew();
        }
        if (status == Status.OPTIMAL && exactCost) {
            status = withoutPerturbation();
        }
        return status == Status.OPTIMAL && farOut() ? Status.UNBOUNDED : status;
    }

    @Override
    public Status solveLimited(double[] newLower, double[] newUpper, int mostPivots) {
        if (!takeBounds(newLower, newUpper)) {
            return Status.INFEASIBLE;
        }
        leaveOutIdleRows();
        placeNonbasic();
        Status status = iterate(mostPivots).orElse(Status.OPTIMAL);
        if (status == Status.INFEASIBLE || drifted()) {
            // A solve that was cut short decides nothing for good.
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
        leaveOutIdleRows();
        placeNonbasic();
        return iterate(50 * (m + n) + 1000).orElseThrow(() -> new IllegalStateException("dual simplex found no end."));
    }

    /**
     * From the rows as given. So many pivots in one go may gather rounding until nothing is true any more, and then a fresh tableau
     * of the basis they led to helps. An infeasibility cuts off a whole subtree, so one that is not proven is a fault.
     */
    private Status settleAnew() {
        tableau.reset();
        Status status = settle();
        for (int attempt = 0; status == Status.INFEASIBLE && !provenInfeasible(); attempt++) {
            if (attempt == MOST_REBUILDS) {
                throw new IllegalStateException("dual simplex cannot prove that nothing keeps all bounds.");
            }
            rebuild();
            status = settle();
        }
        return status;
    }

    private boolean provenInfeasible() {
        return rows.contradict(tableau.multipliersOfRow(hopelessRow), lower, upper);
    }

    /** Goes on with the true costs, for a while: if that goes round in circles, the perturbed optimum has to do. */
    private Status withoutPerturbation() {
        tableau.walkOnTrueCosts();
        placeNonbasic();
        Optional<Status> status = iterate(2 * (m + n)).filter(s -> s == Status.OPTIMAL);
        tableau.walkOnGivenCosts();
        return status.orElseGet(this::settle);
    }

    /** Every nonbasic variable to the bound that its reduced cost wants, and the basic ones to what follows. */
    private void placeNonbasic() {
        stop.spend(n + (long) n * tableau.lines());
        for (int j = 0; j < n; j++) {
            int k = tableau.nonbasic[j];
            double d = tableau.d[j];
            boolean wantsUpper = d < -DUAL || (d <= DUAL && upper[k] - xN[j] < xN[j] - lower[k]);
            double value = wantsUpper ? upper[k] : lower[k];
            if (Double.isInfinite(value) && Math.abs(d) <= DUAL) {
                value = Double.isInfinite(lower[k]) ? (Double.isInfinite(upper[k]) ? 0 : upper[k]) : lower[k];
            }
            xN[j] = Double.isInfinite(value) ? Math.copySign(FAR, value) : value;
        }
        for (int i = 0; i < tableau.lines(); i++) {
            double[] row = tableau.t[i];
            double sum = 0;
            for (int j = 0; j < n; j++) {
                sum += row[j] * xN[j];
            }
            xB[i] = sum;
        }
    }

    private void leaveOutIdleRows() {
        for (int i = tableau.lines() - 1; i >= 0; i--) {
            int row = tableau.basic[i] - n;
            if (row >= 0 && ++idleFor[row] > IDLE) {
                tableau.leaveOut(i);
            }
        }
    }

    /** Takes in the rows that the present point breaks; false when it keeps all of them. */
    private boolean takeInBrokenRows() {
        stop.spend(rows.size());
        double[] x = columns();
        int before = tableau.lines();
        for (int i = 0; i < m; i++) {
            if (!tableau.holds(i)) {
                double activity = rows.activity(i, x);
                double miss = Math.max(lower[n + i] - activity, activity - upper[n + i]);
                if (miss > FEASIBLE * Math.max(1, Math.abs(activity))) {
                    int line = tableau.lines();
                    tableau.takeIn(i);
                    xB[line] = activity;
                    tolerated[line] = false;
                    idleFor[i] = 0;
                }
            }
        }
        return tableau.lines() > before;
    }

    /** Pivots until the point keeps all bounds, or none can; empty when the limit comes first. */
    private Optional<Status> iterate(int limit) {
        Arrays.fill(tolerated, false);
        for (int count = 0; count < limit; count++) {
            stop.spend(tableau.lines());
            int r = leavingRow();
            if (r < 0 && !takeInBrokenRows()) {
                return Optional.of(Status.OPTIMAL);
            }
            if (r < 0) {
                continue;
            }
            int k = tableau.basic[r];
            boolean rises = xB[r] < lower[k];
            double target = rises ? lower[k] : upper[k];
            int q = ratioTest.entering(r, rises, Math.abs(target - xB[r]));
            if (q < 0) {
                if (Math.abs(target - xB[r]) > HOPELESS * Math.max(1, Math.abs(target))) {
                    hopelessRow = r;
                    return Optional.of(Status.INFEASIBLE);
                }
                tolerated[r] = true;
                continue;
            }
            for (int f = 0; f < ratioTest.flips(); f++) {
                flip(ratioTest.flip(f));
            }
            step(r, q, target);
        }
        return Optional.empty();
    }

    /** The basic variable furthest outside its bounds, measured by its weight; -1 when none is. */
    private int leavingRow() {
        int best = -1;
        double worst = 0;
        for (int i = 0; i < tableau.lines(); i++) {
            int k = tableau.basic[i];
            double miss = Math.max(lower[k] - xB[i], xB[i] - upper[k]);
            double tolerance = FEASIBLE * Math.max(1, Math.abs(xB[i]));
            if (miss > tolerance && miss * miss > worst * tableau.weight[i] && !tolerated[i]) {
                best = i;
                worst = miss * miss / tableau.weight[i];
            }
        }
        return best;
    }

    private void flip(int j) {
        stop.spend(tableau.lines());
        int k = tableau.nonbasic[j];
        double to = xN[j] == lower[k] ? upper[k] : lower[k];
        double change = to - xN[j];
        xN[j] = to;
        for (int i = 0; i < tableau.lines(); i++) {
            xB[i] += tableau.t[i][j] * change;
        }
    }

    /** Moves the leaving variable to its bound and lets column q take over row r. */
    private void step(int r, int q, double target) {
        double theta = (target - xB[r]) / tableau.t[r][q];
        for (int i = 0; i < tableau.lines(); i++) {
            xB[i] += tableau.t[i][q] * theta;
        }
        double entered = xN[q] + theta;
        if (tableau.nonbasic[q] >= n) {
            idleFor[tableau.nonbasic[q] - n] = 0;
        }
        xN[q] = target;
        tableau.pivot(r, q);
        xB[r] = entered;
    }

    /** Whether rounding has let the tableau or the reduced costs drift from the rows and costs as given. */
    private boolean drifted() {
        if (tableau.pivots() < PIVOTS_BEFORE_CHECK) {
            return false;
        }
        if (tableau.pivots() > MOST_PIVOTS_UNCHECKED) {
            return true;
        }
        stop.spend(rows.size());
        double[] all = all();
        for (int i = 0; i < m; i++) {
            double activity = rows.activity(i, all);
            if (tableau.holds(i) && Math.abs(activity - all[n + i]) > DRIFT * Math.max(1, Math.abs(activity))) {
                return true;
            }
        }
        double asGiven = 0;
        double asReduced = 0;
        for (int j = 0; j < n; j++) {
            asGiven += costs[j] * all[j];
            asReduced += tableau.trueD[j] * xN[j];
        }
        return Math.abs(asGiven - asReduced) > DRIFT * Math.max(1, Math.abs(asGiven));
    }

    /** Values of all variables, columns first. */
    private double[] all() {
        double[] all = new double[n + m];
        for (int j = 0; j < n; j++) {
            all[tableau.nonbasic[j]] = xN[j];
        }
        for (int i = 0; i < tableau.lines(); i++) {
            all[tableau.basic[i]] = xB[i];
        }
        for (int i = 0; i < m; i++) {
            if (!tableau.holds(i)) {
                all[n + i] = rows.activity(i, all);
            }
        }
        return all;
    }

    private double[] columns() {
        double[] x = new double[n];
        for (int j = 0; j < n; j++) {
            if (tableau.nonbasic[j] < n) {
                x[tableau.nonbasic[j]] = xN[j];
            }
        }
        for (int i = 0; i < tableau.lines(); i++) {
            if (tableau.basic[i] < n) {
                x[tableau.basic[i]] = xB[i];
            }
        }
        return x;
    }

    /** A fresh tableau of the present basis; every variable stays where it is. */
    private void rebuild() {
        double[] all = all();
        tableau.rebuild();
        for (int j = 0; j < n; j++) {
            xN[j] = all[tableau.nonbasic[j]];
        }
    }

    private boolean farOut() {
        return Arrays.stream(xN).anyMatch(x -> Math.abs(x) >= FAR);
    }

    /** The bound that the true costs prove in this basis. */
    @Override
    public double cost() {
        stop.spend(rows.size());
        System.arraycopy(costs, 0, reduced, 0, n);
        return offset + rows.bound(tableau.multipliers(), reduced, lower, upper);
    }

    @Override
    public double[] reducedCosts() {
        return reduced.clone();
    }

    @Override
    public double[] values() {
        double[] x = columns();
        for (int j = 0; j < n; j++) {
            // A miss within the tolerance must not look like a fraction beyond the bound.
            x[j] = Math.max(lower[j], Math.min(upper[j], x[j]));
        }
        return x;
    }

    /** Multipliers of the scaled rows that prove {@link #cost}. */
    double[] multipliers() {
        return tableau.multipliers();
    }

    /**
     * Why nothing keeps all bounds.
     *
     * @param multipliers of the scaled rows: so combined, they ask of every point for more than it can give
     * @param by how much more
     */
    record Contradiction(double[] multipliers, double by) {}

    /** After a solve that found that nothing does. */
    Contradiction contradiction() {
        double[] multipliers = tableau.multipliersOfRow(hopelessRow);
        double by = rows.bound(multipliers, new double[n], lower, upper);
        if (by > 0) {
            return new Contradiction(multipliers, by);
        }
        double[] opposite = Arrays.stream(multipliers).map(a -> -a).toArray();
        return new Contradiction(opposite, rows.bound(opposite, new double[n], lower, upper));
    }

    /** What there is to know of the last optimum by whoever wants to derive more rows from it. */
    Optimum optimum() {
        double[] all = all();
        boolean[] basic = new boolean[n + m];
        Arrays.fill(basic, true);
        for (int k : tableau.nonbasic) {
            basic[k] = false;
        }
        return new Optimum(rows, lower, upper, all, basic);
    }

    /** The multipliers of the rows as given whose combination has this variable as its only basic one; it is basic. */
    double[] multipliersOf(int variable) {
        int r = 0;
        while (tableau.basic[r] != variable) {
            r++;
        }
        return tableau.multipliersOfRow(r);
    }

    /**
     * An optimum, over columns first and then the activities of the rows.
     *
     * @param rows as given
     * @param lower bounds of all variables
     * @param upper bounds of all variables
     * @param values of all variables
     * @param basic which variables are basic
     */
    record Optimum(GivenRows rows, double[] lower, double[] upper, double[] values, boolean[] basic) {}
}
