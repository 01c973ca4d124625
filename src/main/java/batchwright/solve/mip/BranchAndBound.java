package batchwright.solve.mip;

import batchwright.solve.mip.NodeQueue.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Exact, deterministic branch and bound. Dives first (an early plan), then takes the open node with the least bound. Which
 * column to branch on is tried out (strong branching) until enough is known of it, then guessed from what it cost before. The
 * clock is asked only whether to stop; it never changes the order of work.
 *
 * @param <S> what a solution is to the caller
 */
public final class BranchAndBound<S> {
    private static final double WHOLE = 1e-6;
    private static final double COST = 1e-6;
    /** A column is tried out until both of its sides were seen so often. */
    private static final int RELIABLE = 2;

    private static final int MOST_TRIALS = 8;
    private static final int TRIAL_PIVOTS = 15;
    private static final int DIVE_EVERY = 100;

    private final MipModel model;
    private final Relaxation relaxation;
    private final Propagation propagation;
    private final PseudoCosts pseudoCosts;
    private final boolean[] mayRise;
    private final Completion<S> completion;
    private final Stop stop;
    private final NodeQueue queue;

    private double cutoff;
    private Optional<S> incumbent = Optional.empty();
    /** The node that is being looked at. */
    private Optional<Node> current = Optional.empty();

    private long nodes;
    private long expanded;
    private long ids;

    /**
     * @param completion makes a solution of a point whose whole columns are whole
     * @param cutoff only solutions that cost less than this are wanted
     * @param stop asked at each node but the first: even a search that must stop at once has a bound
     */
    public BranchAndBound(MipModel model, Completion<S> completion, double cutoff, Stop stop) {
        this(model, new DualSimplex(model, stop), completion, cutoff, stop);
    }

    private BranchAndBound(MipModel model, Relaxation relaxation, Completion<S> completion, double cutoff, Stop stop) {
        this.model = model;
        this.relaxation = relaxation;
        this.propagation = new Propagation(model, stop);
        this.pseudoCosts = new PseudoCosts(model.columns().size());
        this.mayRise = model.mayRise();
        this.completion = completion;
        this.cutoff = cutoff;
        this.stop = stop;
        this.queue = new NodeQueue(node -> completion.postponedUntil(node.lower(), node.upper()), this::relaxations);
    }

    /** As the constructor, with the relaxation strengthened by cuts: worth it where many nodes are to be expected. */
    public static <S> BranchAndBound<S> withCuts(MipModel model, Completion<S> completion, double cutoff, Stop stop) {
        var strengthened = RootCuts.strengthen(model, stop);
        return new BranchAndBound<>(strengthened.model(), strengthened.relaxation(), completion, cutoff, stop);
    }

    /** For a model that says everything: a solution is the vector of column values, whole columns rounded. */
    public static BranchAndBound<double[]> plain(MipModel model, double cutoff, Stop stop) {
        return new BranchAndBound<>(model, new PlainCompletion(model), cutoff, stop);
    }

    /** Only solutions that cost less than this are wanted from now on; a dearer one that was found is forgotten. */
    public void lowerCutoff(double to) {
        if (to < cutoff) {
            cutoff = to;
            incumbent = Optional.empty();
        }
    }

    /** The solution that the cutoff stands for: the answer if nothing cheaper exists. */
    public void setIncumbent(S solution) {
        incumbent = Optional.of(solution);
    }

    /**
     * Searches to the end, or until told to stop; asked again, it goes on from where it stopped. Ended within a node by
     * {@link OutOfTime}, it answers with what it has, and is not to be asked again.
     */
    public SearchResult<S> search() {
        try {
            return searchOn();
        } catch (OutOfTime over) {
            return stopped();
        }
    }

    private SearchResult<S> searchOn() {
        if (ids == 0) {
            begin();
        }
        while (true) {
            if (current.isEmpty()) {
                current = queue.next(node -> closed(node.bound()));
                if (current.isEmpty()) {
                    return result(SearchResult.State.DONE, cutoff);
                }
            }
            Node node = current.get();
            if (nodes > 0) {
                if (stop.requested()) {
                    return stopped();
                }
                stop.spendNode();
            }
            Relaxation.Status status = relax(node.lower(), node.upper());
            if (status == Relaxation.Status.UNBOUNDED) {
                return result(SearchResult.State.UNBOUNDED, Double.NEGATIVE_INFINITY);
            }
            current = status == Relaxation.Status.INFEASIBLE
                    ? Optional.empty()
                    : expand(node).filter(queue::isReady);
        }
    }

    /** The node that was being looked at stays open. */
    private SearchResult<S> stopped() {
        current.ifPresent(queue::add);
        current = Optional.empty();
        return result(SearchResult.State.STOPPED, Math.min(roundedUp(queue.leastBound()), cutoff));
    }

    private void begin() {
        double[] lower = model.columns().stream().mapToDouble(Column::lower).toArray();
        double[] upper = model.columns().stream().mapToDouble(Column::upper).toArray();
        var root = new Node(lower, upper, Double.NEGATIVE_INFINITY, ids++);
        current = Optional.of(root);
        if (propagation.all(lower, upper)) {
            queue.add(root);
        }
        current = Optional.empty();
    }

    /** Relaxations solved so far, in completing points too. */
    private long relaxations() {
        return nodes + completion.relaxations();
    }

    /** No solution in the open nodes costs less than this; the node that is being looked at is not among them. */
    public double leastOpenBound() {
        return queue.leastBound();
    }

    /**
     * Looks for a solution near a relaxed point: fixes columns one by one at the nearest whole number, and last rounds up those
     * that break nothing when raised (more packs than needed, say).
     */
    private void dive(Node node, double[] start) {
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
                x[c.index()] = Math.ceil(x[c.index()] - WHOLE);
            }
        }
        completion
                .heuristic(new Completion.Point(x, lower, upper, Double.NEGATIVE_INFINITY, relaxations()), cutoff)
                .ifPresent(this::takeIncumbent);
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
                    && relax(lower, upper) == Relaxation.Status.OPTIMAL
                    && !closed(roundedUp(relaxation.cost()))) {
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
            if (c.whole() && c.rank() < Column.LATER && !mayRise[c.index()] && distance > WHOLE && distance < nearest) {
                best = c.index();
                nearest = distance;
            }
        }
        return best;
    }

    private void takeIncumbent(Completion.Found<S> found) {
        if (found.cost() < cutoff - COST) {
            cutoff = found.cost();
            incumbent = Optional.of(found.solution());
        }
    }

    private Relaxation.Status relax(double[] lower, double[] upper) {
        nodes++;
        return relaxation.solve(lower, upper);
    }

    private SearchResult<S> result(SearchResult.State state, double bound) {
        return new SearchResult<>(
                state, incumbent, incumbent.isPresent() ? cutoff : Double.POSITIVE_INFINITY, bound, nodes);
    }

    /** Cuts off, completes or branches; the child to dive into, if any. */
    private Optional<Node> expand(Node node) {
        while (true) {
            double bound = Math.max(roundedUp(relaxation.cost()), node.bound());
            if (closed(bound)) {
                return Optional.empty();
            }
            double[] x = relaxation.values();
            double cost = relaxation.cost();
            tightenByReducedCosts(node, cost);
            List<Integer> fractional = fractional(x);
            if (fractional.isEmpty()) {
                return complete(node, bound, x);
            }
            if (expanded++ % DIVE_EVERY == 0) {
                dive(node, x.clone());
            }
            Branching branching = choose(node, x, cost, fractional);
            if (branching.tightened >= 0) {
                if (!propagation.from(branching.tightened, node.lower(), node.upper())
                        || relax(node.lower(), node.upper()) != Relaxation.Status.OPTIMAL) {
                    return Optional.empty();
                }
                continue;
            }
            return branch(node, bound, branching.column, x[branching.column]);
        }
    }

    private Optional<Node> complete(Node node, double bound, double[] x) {
        Completion.Verdict<S> verdict =
                completion.complete(new Completion.Point(x, node.lower(), node.upper(), bound, relaxations()), cutoff);
        verdict.found().ifPresent(this::takeIncumbent);
        if (!closed(bound)) {
            verdict.subproblems().forEach(sub -> child(node, bound, sub).ifPresent(child -> queue.add(child)));
        }
        return Optional.empty();
    }

    private Optional<Node> child(Node parent, double bound, Completion.Subproblem subproblem) {
        double[] lows = parent.lower().clone();
        double[] ups = parent.upper().clone();
        for (Completion.ColumnRange c : subproblem.columns()) {
            int j = c.column().index();
            lows[j] = Math.max(lows[j], c.lower());
            ups[j] = Math.min(ups[j], c.upper());
            if (lows[j] > ups[j] || !propagation.from(j, lows, ups)) {
                return Optional.empty();
            }
        }
        return Optional.of(new Node(lows, ups, Math.max(bound, subproblem.bound()), ids++));
    }

    /**
     * The column to branch on, or one of whose sides turned out to be empty, so that the node became smaller instead.
     *
     * @param column to branch on
     * @param tightened the column whose bound was moved instead; -1 for none
     */
    private record Branching(int column, int tightened) {}

    private Branching choose(Node node, double[] x, double cost, List<Integer> fractional) {
        List<Integer> ranked = new ArrayList<>(fractional);
        ranked.sort(Comparator.comparingDouble((Integer j) -> -pseudoCosts.score(j, x[j] - Math.floor(x[j])))
                .thenComparing(j -> j));
        int best = ranked.get(0);
        double bestScore = -1;
        int trials = 0;
        for (int j : ranked) {
            double fraction = x[j] - Math.floor(x[j]);
            double score = pseudoCosts.score(j, fraction);
            if (pseudoCosts.seen(j) < RELIABLE && trials < MOST_TRIALS && !stop.urgent()) {
                stop.spendTrial();
                trials++;
                double down = trial(node, j, x[j], cost, false);
                double up = trial(node, j, x[j], cost, true);
                if (Double.isInfinite(down) || Double.isInfinite(up)) {
                    if (Double.isInfinite(down)) {
                        node.lower()[j] = Math.floor(x[j]) + 1;
                    } else {
                        node.upper()[j] = Math.floor(x[j]);
                    }
                    return new Branching(-1, j);
                }
                score = PseudoCosts.score(down, up);
            }
            if (score > bestScore) {
                bestScore = score;
                best = j;
            }
        }
        return new Branching(best, -1);
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
        if (!propagation.from(j, lower, upper)) {
            return Double.POSITIVE_INFINITY;
        }
        nodes++;
        if (relaxation.solveLimited(lower, upper, TRIAL_PIVOTS) != Relaxation.Status.OPTIMAL) {
            return Double.POSITIVE_INFINITY;
        }
        double gain = Math.max(0, relaxation.cost() - cost);
        pseudoCosts.learn(j, up, Math.abs((up ? lower[j] : upper[j]) - value), gain);
        return closed(roundedUp(relaxation.cost())) ? Double.POSITIVE_INFINITY : gain;
    }

    private Optional<Node> branch(Node node, double bound, int column, double value) {
        double down = Math.floor(value);
        Optional<Node> below = child(node, bound, column, node.lower()[column], down);
        Optional<Node> above = child(node, bound, column, down + 1, node.upper()[column]);
        boolean upFirst = value - down > 0.5;
        (upFirst ? below : above).ifPresent(queue::add);
        return upFirst ? above : below;
    }

    private Optional<Node> child(Node parent, double bound, int column, double lower, double upper) {
        double[] lows = parent.lower().clone();
        double[] ups = parent.upper().clone();
        lows[column] = lower;
        ups[column] = upper;
        return propagation.from(column, lows, ups) ? Optional.of(new Node(lows, ups, bound, ids++)) : Optional.empty();
    }

    /** A whole column cannot move further off its bound than its reduced cost allows below the cutoff. */
    private void tightenByReducedCosts(Node node, double cost) {
        double room = cutoff - Math.max(COST, model.costStep() / 2) - cost;
        if (!(room < 1e15)) {
            return;
        }
        double[] reduced = relaxation.reducedCosts();
        for (Column c : model.columns()) {
            int j = c.index();
            if (c.whole() && node.lower()[j] < node.upper()[j] && Math.abs(reduced[j]) > 1e-9) {
                double steps = Math.floor(room / Math.abs(reduced[j]) + WHOLE);
                if (reduced[j] > 0) {
                    node.upper()[j] = Math.min(node.upper()[j], node.lower()[j] + steps);
                } else {
                    node.lower()[j] = Math.max(node.lower()[j], node.upper()[j] - steps);
                }
            }
        }
    }

    /** The whole columns that are not whole, of the lowest rank that has one. */
    private List<Integer> fractional(double[] x) {
        List<Integer> found = new ArrayList<>();
        int rank = Integer.MAX_VALUE;
        for (Column c : model.columns()) {
            double v = x[c.index()];
            if (c.whole() && c.rank() < Column.LATER && c.rank() <= rank && Math.abs(v - Math.rint(v)) > WHOLE) {
                if (c.rank() < rank) {
                    found.clear();
                    rank = c.rank();
                }
                found.add(c.index());
            }
        }
        return found;
    }

    private boolean closed(double bound) {
        return bound > cutoff - Math.max(COST, model.costStep() / 2);
    }

    private double roundedUp(double bound) {
        double step = model.costStep();
        return step > 0 && Double.isFinite(bound) ? Math.ceil(bound / step - COST) * step : bound;
    }
}
