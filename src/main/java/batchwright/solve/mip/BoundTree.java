package batchwright.solve.mip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Splits a model at whole columns until multipliers prove of each piece that it costs at least so much, and keeps the splits and
 * multipliers. It uses nothing that a reader of the tree could not follow: no cuts. Depth first.
 */
public final class BoundTree {
    private static final int TRIALS = 8;
    private static final int TRIAL_PIVOTS = 20;
    private static final int RELIABLE = 2;

    private final MipModel model;
    private final LeastCost relaxation;
    private final PseudoCosts pseudoCosts;
    private final Judge judge;
    private final StepBudget budget;
    private long goal;

    /** Says what holds beyond doubt of a piece, and narrows it. */
    public interface Judge {
        /**
         * Narrows bounds without losing a point.
         *
         * @return false when there is none
         */
        boolean narrow(double[] lower, double[] upper);

        /** The piece within these bounds costs at least so many whole cents. */
        long bound(double[] multipliers, double[] lower, double[] upper);
    }

    /** A piece of the model. */
    public sealed interface Tree {}

    /** @param multipliers of the rows as given */
    public record Leaf(double[] multipliers) implements Tree {}

    /** @param low where the column is at most {@code at}; high where it is at least one more */
    public record Split(Column column, long at, Tree low, Tree high) implements Tree {}

    /**
     * @param goal to be proven; lowered to what is proven when that is less
     * @param mostNodes pieces that are looked at; then what is open is left as it is
     */
    public BoundTree(MipModel model, Judge judge, long goal, long mostNodes, Stop stop) {
        this.model = model;
        this.relaxation = new LeastCost(model, stop);
        this.pseudoCosts = new PseudoCosts(model.columns().size());
        this.judge = judge;
        this.goal = goal;
        this.budget = new StepBudget(mostNodes);
    }

    /** The tree that proves {@link #proven()}. */
    public Tree grow() {
        return grow(
                model.columns().stream().mapToDouble(Column::lower).toArray(),
                model.columns().stream().mapToDouble(Column::upper).toArray());
    }

    /** What the tree proves; the goal, or less. */
    public long proven() {
        return goal;
    }

    /** What multipliers are to prove of a piece without a point, so that rounding leaves the goal. */
    public static double enough(long goal) {
        return 2.0 * goal + 1;
    }

    /** The bounds become those of the piece. */
    private Tree grow(double[] lower, double[] upper) {
        if (!judge.narrow(lower, upper)) {
            return new Leaf(new double[0]);
        }
        LeastCost.Answer answer = relaxation.within(lower, upper, enough(goal));
        long bound = judge.bound(answer.multipliers(), lower, upper);
        if (bound >= goal) {
            return new Leaf(answer.multipliers());
        }
        int column = answer.isPoint() && !budget.isSpent() ? column(answer, lower, upper) : -1;
        if (column < 0) {
            goal = bound;
            return new Leaf(answer.multipliers());
        }
        budget.spend();
        double at = Math.floor(answer.values()[column]);
        double[] below = upper.clone();
        below[column] = at;
        double[] above = lower.clone();
        above[column] = at + 1;
        Tree low = grow(lower.clone(), below);
        Tree high = grow(above, upper.clone());
        return new Split(model.columns().get(column), (long) at, low, high);
    }

    /** The column whose sides both raise the bound most; -1 when all are whole that must be. */
    private int column(LeastCost.Answer answer, double[] lower, double[] upper) {
        double[] x = answer.values();
        List<Integer> ranked = new ArrayList<>();
        for (Column column : model.columns()) {
            double value = x[column.index()];
            if (column.whole() && Math.abs(value - Math.rint(value)) > Column.WHOLE) {
                ranked.add(column.index());
            }
        }
        ranked.sort(Comparator.comparingDouble((Integer j) -> -pseudoCosts.score(j, x[j] - Math.floor(x[j])))
                .thenComparing(j -> j));
        int best = -1;
        double bestScore = -1;
        int trials = 0;
        for (int j : ranked) {
            double score = pseudoCosts.score(j, x[j] - Math.floor(x[j]));
            if (pseudoCosts.seen(j) < RELIABLE && trials < TRIALS) {
                trials++;
                score = PseudoCosts.score(trial(j, answer, lower, upper, false), trial(j, answer, lower, upper, true));
            }
            if (score > bestScore) {
                bestScore = score;
                best = j;
            }
        }
        return best;
    }

    /** By how much the bound rises on a side, and no more than is of use. */
    private double trial(int j, LeastCost.Answer answer, double[] lower, double[] upper, boolean up) {
        double at = Math.floor(answer.values()[j]);
        double[] lows = lower.clone();
        double[] ups = upper.clone();
        if (up) {
            lows[j] = at + 1;
        } else {
            ups[j] = at;
        }
        double cost = judge.narrow(lows, ups) ? relaxation.guess(lows, ups, TRIAL_PIVOTS) : Double.POSITIVE_INFINITY;
        double gain = Math.max(0, Math.min(cost, (double) goal) - answer.cost());
        pseudoCosts.learn(j, up, Math.abs((up ? at + 1 : at) - answer.values()[j]), gain);
        return gain;
    }
}
