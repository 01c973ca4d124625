package batchwright.solve.mip;

import batchwright.solve.mip.NodeQueue.Node;
import java.util.function.LongSupplier;

/**
 * A heuristic: looks for a solution near a relaxed point. It fixes columns one by one at the nearest whole number, and last rounds
 * up those that break nothing when raised (more packs than needed, say).
 */
final class Dive<S> {
    private final MipModel model;
    private final Relaxation relaxation;
    private final Propagation propagation;
    private final Completion<S> completion;
    private final Incumbent<S> incumbent;
    private final Stop stop;
    private final LongSupplier relaxations;
    private final boolean[] mayRise;

    /** @param relaxations solved so far, in completing points too */
    Dive(
            MipModel model,
            Relaxation relaxation,
            Propagation propagation,
            Completion<S> completion,
            Incumbent<S> incumbent,
            Stop stop,
            LongSupplier relaxations) {
        this.model = model;
        this.relaxation = relaxation;
        this.propagation = propagation;
        this.completion = completion;
        this.incumbent = incumbent;
        this.stop = stop;
        this.relaxations = relaxations;
        this.mayRise = model.mayRise();
    }

    /** @param start the relaxed point of the node */
    void from(Node node, double[] start) {
        double[] lower = node.lower().clone();
        double[] upper = node.upper().clone();
        double[] x = start;
        int next = nearestToWhole(x);
        while (next >= 0) {
            if (stop.urgent()) {
                return;
            }
            stop.spendTrial();
            if (!fix(next, Math.rint(x[next]), x[next], lower, upper)) {
                return;
            }
            x = relaxation.values();
            next = nearestToWhole(x);
        }
        for (Column c : model.columns()) {
            if (mayRise[c.index()] && c.rank() < Column.LATER) {
                x[c.index()] = Math.ceil(x[c.index()] - Column.WHOLE);
            }
        }
        var point = new Completion.Point(x, lower, upper, Double.NEGATIVE_INFINITY, relaxations.getAsLong());
        completion.heuristic(point, incumbent.cutoff()).ifPresent(incumbent::offer);
    }

    /** Moves a bound to the target and solves again; tries the other side when that fails. */
    private boolean fix(int j, double target, double value, double[] lower, double[] upper) {
        double[] lows = lower.clone();
        double[] ups = upper.clone();
        for (int attempt = 0; attempt < 2; attempt++) {
            boolean up = (target > value) == (attempt == 0);
            if (up) {
                lower[j] = Math.floor(value) + 1;
            } else {
                upper[j] = Math.floor(value);
            }
            if (propagation.from(j, lower, upper)
                    && relaxation.solve(lower, upper) == Relaxation.Status.OPTIMAL
                    && !incumbent.closes(incumbent.roundedUp(relaxation.cost()))) {
                return true;
            }
            System.arraycopy(lows, 0, lower, 0, lows.length);
            System.arraycopy(ups, 0, upper, 0, ups.length);
        }
        return false;
    }

    /** The fractional column nearest to a whole number, among those that cannot simply be rounded up; -1 for none. */
    private int nearestToWhole(double[] x) {
        int best = -1;
        double nearest = 1;
        for (Column c : model.columns()) {
            double distance = Math.abs(x[c.index()] - Math.rint(x[c.index()]));
            if (c.whole()
                    && c.rank() < Column.LATER
                    && !mayRise[c.index()]
                    && distance > Column.WHOLE
                    && distance < nearest) {
                best = c.index();
                nearest = distance;
            }
        }
        return best;
    }
}
