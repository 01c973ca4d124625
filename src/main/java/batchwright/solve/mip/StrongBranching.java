package batchwright.solve.mip;

import batchwright.solve.mip.NodeQueue.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Chooses the column to branch on. A column is tried out on both sides until enough is known of it, then guessed from what it
 * cost before (reliability branching).
 */
final class StrongBranching {
    /** A column is tried out until both of its sides were seen so often. */
    private static final int RELIABLE = 2;

    private static final int MOST_TRIALS = 8;
    private static final int TRIAL_PIVOTS = 15;

    private final Relaxation relaxation;
    private final Propagation propagation;
    private final PseudoCosts pseudoCosts;
    private final Incumbent<?> incumbent;
    private final Stop stop;

    StrongBranching(int columns, Relaxation relaxation, Propagation propagation, Incumbent<?> incumbent, Stop stop) {
        this.relaxation = relaxation;
        this.propagation = propagation;
        this.pseudoCosts = new PseudoCosts(columns);
        this.incumbent = incumbent;
        this.stop = stop;
    }

    /**
     * The column to branch on, or one of whose sides turned out to be empty, so that the node became smaller instead.
     *
     * @param column to branch on; -1 for none
     * @param tightened the column whose bound was moved instead; -1 for none
     */
    record Choice(int column, int tightened) {}

    /** @param fractional columns, at least one */
    Choice choose(Node node, double[] x, double cost, List<Integer> fractional) {
        List<Integer> ranked = new ArrayList<>(fractional);
        ranked.sort(Comparator.comparingDouble((Integer j) -> -pseudoCosts.score(j, x[j] - Math.floor(x[j])))
                .thenComparing(j -> j));
        int best = ranked.get(0);
        double bestScore = -1;
        int trials = 0;
        for (int j : ranked) {
            double score = pseudoCosts.score(j, x[j] - Math.floor(x[j]));
            if (pseudoCosts.seen(j) < RELIABLE && trials < MOST_TRIALS && !stop.urgent()) {
                stop.spendTrial();
                trials++;
                double down = trial(node, j, x[j], cost, false);
                double up = trial(node, j, x[j], cost, true);
                if (Double.isInfinite(down) || Double.isInfinite(up)) {
                    tighten(node, j, x[j], Double.isInfinite(down));
                    return new Choice(-1, j);
                }
                score = PseudoCosts.score(down, up);
            }
            if (score > bestScore) {
                bestScore = score;
                best = j;
            }
        }
        return new Choice(best, -1);
    }

    private static void tighten(Node node, int j, double value, boolean up) {
        if (up) {
            node.lower()[j] = Math.floor(value) + 1;
        } else {
            node.upper()[j] = Math.floor(value);
        }
    }

    /** By how much the bound rises on one side of a column; infinite when nothing of use is left there. */
    private double trial(Node node, int j, double value, double cost, boolean up) {
        double[] lower = node.lower().clone();
        double[] upper = node.upper().clone();
        if (up) {
            lower[j] = Math.floor(value) + 1;
        } else {
            upper[j] = Math.floor(value);
        }
        if (!propagation.from(j, lower, upper)
                || relaxation.solveLimited(lower, upper, TRIAL_PIVOTS) != Relaxation.Status.OPTIMAL) {
            return Double.POSITIVE_INFINITY;
        }
        double gain = Math.max(0, relaxation.cost() - cost);
        pseudoCosts.learn(j, up, Math.abs((up ? lower[j] : upper[j]) - value), gain);
        return incumbent.closes(incumbent.roundedUp(relaxation.cost())) ? Double.POSITIVE_INFINITY : gain;
    }
}
