package batchwright.solve.mip;

import batchwright.solve.mip.NodeQueue.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Exact, deterministic branch and bound. Dives first (an early plan), then takes the open node with the least bound. The
 * clock is asked only whether to stop; it never changes the order of work.
 *
 * @param <S> what a solution is to the caller
 */
public final class BranchAndBound<S> {
    private static final int DIVE_EVERY = 100;

    private final MipModel model;
    private final CountingRelaxation relaxation;
    private final Propagation propagation;
    private final Completion<S> completion;
    private final Stop stop;
    private final NodeQueue queue;
    private final Incumbent<S> incumbent;
    private final StrongBranching branching;
    private final Dive<S> dive;

    /** The node that is being looked at. */
    private Optional<Node> current = Optional.empty();

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
        this.relaxation = new CountingRelaxation(relaxation);
        this.propagation = new Propagation(model, stop);
        this.completion = completion;
        this.incumbent = new Incumbent<>(model.costStep(), cutoff);
        this.stop = stop;
        this.branching = new StrongBranching(model.columns().size(), this.relaxation, propagation, incumbent, stop);
        this.dive = new Dive<>(model, this.relaxation, propagation, completion, incumbent, stop, this::relaxations);
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
        incumbent.lowerCutoff(to);
    }

    /** A solution from elsewhere, of use if it is cheaper than what was found. */
    public void offer(Completion.Found<S> solution) {
        incumbent.offer(solution);
    }

    /** What made nodes wait has changed: the completion is asked anew until when each is postponed. */
    public void askPostponedAnew() {
        queue.askPostponedAnew();
    }

    /** The solution that the cutoff stands for: the answer if nothing cheaper exists. */
    public void setIncumbent(S solution) {
        incumbent.set(solution);
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
                current = queue.next(node -> incumbent.closes(node.bound()));
                if (current.isEmpty()) {
                    return result(SearchResult.State.DONE, incumbent.cutoff());
                }
            }
            Node node = current.get();
            if (relaxation.solved() > 0) {
                if (stop.requested()) {
                    return stopped();
                }
                stop.spendNode();
            }
            Relaxation.Status status = relaxation.solve(node.lower(), node.upper());
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
        return result(
                SearchResult.State.STOPPED, Math.min(incumbent.roundedUp(queue.leastBound()), incumbent.cutoff()));
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
        return relaxation.solved() + completion.relaxations();
    }

    /** No solution in the open nodes costs less than this; the node that is being looked at is not among them. */
    public double leastOpenBound() {
        return queue.leastBound();
    }

    private SearchResult<S> result(SearchResult.State state, double bound) {
        return new SearchResult<>(state, incumbent.solution(), incumbent.cost(), bound, relaxation.solved());
    }

    /** Cuts off, completes or branches; the child to dive into, if any. */
    private Optional<Node> expand(Node node) {
        while (true) {
            double bound = Math.max(incumbent.roundedUp(relaxation.cost()), node.bound());
            if (incumbent.closes(bound)) {
                return Optional.empty();
            }
            double[] x = relaxation.values();
            double cost = relaxation.cost();
            if (ReducedCosts.isWorthIt(cost, incumbent.highestOfUse())) {
                ReducedCosts.tighten(node, model, relaxation.reducedCosts(), cost, incumbent.highestOfUse());
            }
            List<Integer> fractional = fractional(x);
            if (fractional.isEmpty()) {
                return complete(node, bound, x);
            }
            if (expanded++ % DIVE_EVERY == 0) {
                dive.from(node, x.clone());
            }
            StrongBranching.Choice choice = branching.choose(node, x, cost, fractional);
            if (choice.tightened() >= 0) {
                if (!propagation.from(choice.tightened(), node.lower(), node.upper())
                        || relaxation.solve(node.lower(), node.upper()) != Relaxation.Status.OPTIMAL) {
                    return Optional.empty();
                }
                continue;
            }
            return branch(node, bound, choice.column(), x[choice.column()]);
        }
    }

    private Optional<Node> complete(Node node, double bound, double[] x) {
        Completion.Verdict<S> verdict = completion.complete(
                new Completion.Point(x, node.lower(), node.upper(), bound, relaxations()), incumbent.cutoff());
        verdict.found().ifPresent(incumbent::offer);
        if (!incumbent.closes(bound)) {
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

    /** The whole columns that are not whole, of the lowest rank that has one. */
    private List<Integer> fractional(double[] x) {
        List<Integer> found = new ArrayList<>();
        int rank = Integer.MAX_VALUE;
        for (Column c : model.columns()) {
            double v = x[c.index()];
            if (c.whole() && c.rank() < Column.LATER && c.rank() <= rank && Math.abs(v - Math.rint(v)) > Column.WHOLE) {
                if (c.rank() < rank) {
                    found.clear();
                    rank = c.rank();
                }
                found.add(c.index());
            }
        }
        return found;
    }
}
