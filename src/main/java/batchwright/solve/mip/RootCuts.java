package batchwright.solve.mip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Strengthens a model before its search: adds rows that every point with whole columns keeps, but the optimum of the relaxation
 * does not, and again for the new optimum, for some rounds. Rows that have become idle are dropped.
 */
final class RootCuts {
    private static final int MOST_ROUNDS = 12;
    /** A round that raises the bound by a smaller share is the last. */
    private static final double LEAST_GAIN = 1e-4;

    private static final double LEAST_DEPTH = 1e-4;
    private static final double WHOLE = 0.01;

    private final MipModel given;
    private final double[] lower;
    private final double[] upper;
    private final CutPool pool;

    private RootCuts(MipModel given, Stop stop) {
        this.given = given;
        this.pool = new CutPool(stop);
        lower = given.columns().stream().mapToDouble(Column::lower).toArray();
        upper = given.columns().stream().mapToDouble(Column::upper).toArray();
    }

    /**
     * A model with more rows, and its relaxation at its optimum or near it. The same points with whole columns, up to rounding,
     * keep the rows of both models.
     */
    record Strengthened(MipModel model, DualSimplex relaxation) {}

    static Strengthened strengthen(MipModel model, Stop stop) {
        var cuts = new RootCuts(model, stop);
        var relaxation = new DualSimplex(model, stop);
        try {
            return new Propagation(model, stop).all(cuts.lower, cuts.upper)
                    ? cuts.strengthened(relaxation, stop)
                    : new Strengthened(model, relaxation);
        } catch (OutOfTime over) {
            return new Strengthened(model, new DualSimplex(model, stop));
        }
    }

    private Strengthened strengthened(DualSimplex start, Stop stop) {
        DualSimplex relaxation = start;
        MipModel model = given;
        double last = Double.NEGATIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && !stop.urgent(); round++) {
            stop.spendTrial();
            if (relaxation.solve(lower, upper) != Relaxation.Status.OPTIMAL) {
                break;
            }
            double bound = relaxation.cost();
            if (bound < last + LEAST_GAIN * Math.max(1, Math.abs(last))) {
                break;
            }
            last = bound;
            List<Cut> before = pool.cuts();
            if (!deeper(relaxation, stop)) {
                break;
            }
            model = given.withCuts(pool.cuts());
            relaxation = new DualSimplex(model, relaxation, rowsIn(before));
        }
        return new Strengthened(model, relaxation);
    }

    /** Where the rows of the model with the cuts of now are among those of the model with the cuts before. */
    private int[] rowsIn(List<Cut> before) {
        int count = given.rowCount();
        return IntStream.concat(
                        IntStream.range(0, count),
                        pool.cuts().stream().mapToInt(before::indexOf).map(k -> k < 0 ? -1 : count + k))
                .toArray();
    }

    /** Drops the cuts that are idle in this optimum and takes the deepest that it gives; false when there are none. */
    private boolean deeper(DualSimplex relaxation, Stop stop) {
        var at = relaxation.optimum();
        double[] x = relaxation.values();
        List<Cut> found = new ArrayList<>();
        for (Column c : given.columns()) {
            double value = x[c.index()];
            if (c.whole() && at.basic()[c.index()] && Math.abs(value - Math.rint(value)) > WHOLE) {
                stop.spend(at.rows().size());
                GomoryCut.of(at, given.columns(), c, relaxation.multipliersOf(c.index()))
                        .filter(cut -> cut.depth(x) > LEAST_DEPTH)
                        .ifPresent(found::add);
            }
        }
        if (found.isEmpty()) {
            return false;
        }
        int firstCut = given.columns().size() + given.rowCount();
        pool.dropIdle(k -> at.basic()[firstCut + k]);
        return pool.takeDeepest(found, x);
    }
}
