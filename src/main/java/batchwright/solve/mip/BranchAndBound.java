package batchwright.solve.mip;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Exact, deterministic branch and bound. Dives first (an early plan), then takes the open node with the least bound. The
 * clock is asked only whether to stop; it never changes the order of work.
 *
 * @param <S> what a solution is to the caller
 */
public final class BranchAndBound<S> {
    private static final double WHOLE = 1e-6;
    private static final double COST = 1e-6;

    private final MipModel model;
    private final Relaxation relaxation;
    private final Completion<S> completion;
    private final BooleanSupplier stop;
    private final PriorityQueue<Node> open = new PriorityQueue<>(Comparator.comparingDouble(Node::bound)
            .thenComparing(Comparator.comparingLong(Node::id).reversed()));

    private double cutoff;
    private Optional<S> best = Optional.empty();
    private long nodes;
    private long ids;

    private record Node(double[] lower, double[] upper, double bound, long id) {}

    /**
     * @param completion makes a solution of a point whose whole columns are whole
     * @param cutoff only solutions that cost less than this are wanted
     * @param stop asked at each node whether to give up
     */
    public BranchAndBound(MipModel model, Completion<S> completion, double cutoff, BooleanSupplier stop) {
        this.model = model;
        this.relaxation = new DualSimplex(model);
        this.completion = completion;
        this.cutoff = cutoff;
        this.stop = stop;
    }

    /** For a model that says everything: a solution is the vector of column values, whole columns rounded. */
    public static BranchAndBound<double[]> plain(MipModel model, double cutoff, BooleanSupplier stop) {
        return new BranchAndBound<>(model, new PlainCompletion(model), cutoff, stop);
    }

    /** Searches to the end, or until told to stop. */
    public SearchResult<S> search() {
        double[] lower = model.columns().stream().mapToDouble(Column::lower).toArray();
        double[] upper = model.columns().stream().mapToDouble(Column::upper).toArray();
        Optional<Node> current = Optional.of(new Node(lower, upper, Double.NEGATIVE_INFINITY, ids++));
        while (true) {
            if (current.isEmpty()) {
                Node next = open.poll();
                if (next == null || closed(next.bound)) {
                    return result(SearchResult.State.DONE, cutoff);
                }
                current = Optional.of(next);
            }
            Node node = current.get();
            if (stop.getAsBoolean()) {
                double least = open.isEmpty() ? node.bound : Math.min(node.bound, open.peek().bound);
                return result(SearchResult.State.STOPPED, Math.min(roundedUp(least), cutoff));
            }
            nodes++;
            Relaxation.Status status = relaxation.solve(node.lower, node.upper);
            if (status == Relaxation.Status.UNBOUNDED) {
                return result(SearchResult.State.UNBOUNDED, Double.NEGATIVE_INFINITY);
            }
            current = status == Relaxation.Status.INFEASIBLE ? Optional.empty() : expand(node);
        }
    }

    private SearchResult<S> result(SearchResult.State state, double bound) {
        return new SearchResult<>(state, best, best.isPresent() ? cutoff : Double.POSITIVE_INFINITY, bound, nodes);
    }

    /** Cuts off, completes or branches; the child to dive into, if any. */
    private Optional<Node> expand(Node node) {
        double bound = Math.max(roundedUp(relaxation.cost()), node.bound);
        if (closed(bound)) {
            return Optional.empty();
        }
        double[] x = relaxation.values();
        tightenByReducedCosts(node);
        int column = mostFractional(x);
        if (column >= 0) {
            double down = Math.floor(x[column]);
            boolean upFirst = x[column] - down > 0.5;
            return branch(node, bound, column, down, upFirst);
        }
        Completion.Verdict<S> verdict = completion.complete(x, node.lower, node.upper, bound, cutoff);
        verdict.found().ifPresent(found -> {
            if (found.cost() < cutoff - COST) {
                cutoff = found.cost();
                best = Optional.of(found.solution());
            }
        });
        if (verdict.splitColumn().isEmpty() || closed(bound)) {
            return Optional.empty();
        }
        return splitAround(node, bound, verdict.splitColumn().getAsInt(), x);
    }

    private Optional<Node> branch(Node node, double bound, int column, double down, boolean upFirst) {
        Node below = child(node, bound, column, node.lower[column], down);
        Node above = child(node, bound, column, down + 1, node.upper[column]);
        open.add(upFirst ? below : above);
        return Optional.of(upFirst ? above : below);
    }

    /** Three children: the column fixed at its whole value, below it, above it. */
    private Optional<Node> splitAround(Node node, double bound, int column, double[] x) {
        double at = Math.rint(x[column]);
        if (at > node.lower[column]) {
            open.add(child(node, bound, column, node.lower[column], at - 1));
        }
        if (at < node.upper[column]) {
            open.add(child(node, bound, column, at + 1, node.upper[column]));
        }
        return Optional.of(child(node, bound, column, at, at));
    }

    private Node child(Node parent, double bound, int column, double lower, double upper) {
        double[] lows = parent.lower.clone();
        double[] ups = parent.upper.clone();
        lows[column] = lower;
        ups[column] = upper;
        return new Node(lows, ups, bound, ids++);
    }

    /** A whole column cannot move further off its bound than its reduced cost allows below the cutoff. */
    private void tightenByReducedCosts(Node node) {
        double room = cutoff - COST - relaxation.cost();
        if (!(room < 1e15)) {
            return;
        }
        double[] reduced = relaxation.reducedCosts();
        for (Column c : model.columns()) {
            int j = c.index();
            if (c.whole() && node.lower[j] < node.upper[j] && Math.abs(reduced[j]) > 1e-9) {
                double steps = Math.floor(room / Math.abs(reduced[j]) + WHOLE);
                if (reduced[j] > 0) {
                    node.upper[j] = Math.min(node.upper[j], node.lower[j] + steps);
                } else {
                    node.lower[j] = Math.max(node.lower[j], node.upper[j] - steps);
                }
            }
        }
    }

    /** The most fractional whole column of the lowest rank that has one; -1 when all are whole. */
    private int mostFractional(double[] x) {
        int best = -1;
        int bestRank = Integer.MAX_VALUE;
        double most = 0;
        for (Column c : model.columns()) {
            double distance = Math.abs(x[c.index()] - Math.rint(x[c.index()]));
            if (c.whole() && distance > WHOLE && (c.rank() < bestRank || (c.rank() == bestRank && distance > most))) {
                best = c.index();
                bestRank = c.rank();
                most = distance;
            }
        }
        return best;
    }

    private boolean closed(double bound) {
        return bound > cutoff - Math.max(COST, model.costStep() / 2);
    }

    private double roundedUp(double bound) {
        double step = model.costStep();
        return step > 0 && Double.isFinite(bound) ? Math.ceil(bound / step - COST) * step : bound;
    }

    private static final class PlainCompletion implements Completion<double[]> {
        private static final double TOLERANCE = 1e-6;
        private final MipModel model;

        PlainCompletion(MipModel model) {
            this.model = model;
        }

        @Override
        public Verdict<double[]> complete(
                double[] values, double[] lower, double[] upper, double bound, double cutoff) {
            double[] x = Arrays.copyOf(values, values.length);
            for (Column c : model.columns()) {
                if (c.whole()) {
                    x[c.index()] = Math.rint(x[c.index()]);
                }
            }
            String broken = model.brokenBy(x, TOLERANCE);
            if (!broken.isEmpty()) {
                throw new IllegalStateException("rounded solution breaks " + broken + ".");
            }
            return Verdict.closed(model.costOf(x), x);
        }
    }
}
