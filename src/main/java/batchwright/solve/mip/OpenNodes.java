package batchwright.solve.mip;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The nodes of a search that are still to be looked at: those that are worth a look now, the least bound first, and those that
 * have to wait until so many relaxations are solved. The completion says which.
 */
final class OpenNodes {
    private static final Comparator<Node> LEAST_BOUND_FIRST = Comparator.comparingDouble(Node::bound)
            .thenComparing(Comparator.comparingLong(Node::id).reversed());
    private static final Comparator<Waiting> SOONEST_FIRST =
            Comparator.comparingLong(Waiting::due).thenComparingLong(w -> w.node.id);

    private final Completion<?> completion;
    private final LongSupplier now;
    private final PriorityQueue<Node> open = new PriorityQueue<>(LEAST_BOUND_FIRST);
    private final PriorityQueue<Waiting> waiting = new PriorityQueue<>(SOONEST_FIRST);

    /**
     * A part of what is searched.
     *
     * @param lower bounds of the columns
     * @param upper bounds of the columns
     * @param bound nothing in it costs less
     */
    record Node(double[] lower, double[] upper, double bound, long id) {}

    private record Waiting(Node node, long due) {}

    /** @param now relaxations solved so far */
    OpenNodes(Completion<?> completion, LongSupplier now) {
        this.completion = completion;
        this.now = now;
    }

    void add(Node node) {
        open.add(node);
    }

    /**
     * Of the nodes that are worth a look now the one with the least bound; when all have to wait, the one that is soonest; none when
     * all are closed.
     *
     * @param closed whether there is nothing of use in a node
     */
    Optional<Node> next(Predicate<Node> closed) {
        while (true) {
            long enough = now.getAsLong();
            while (!waiting.isEmpty() && waiting.element().due <= enough) {
                open.add(waiting.remove().node);
            }
            if (open.isEmpty()) {
                if (waiting.isEmpty()) {
                    return Optional.empty();
                }
                Waiting soonest = waiting.remove();
                enough = soonest.due;
                open.add(soonest.node);
            }
            Node node = open.remove();
            if (!closed.test(node) && isReady(node, enough)) {
                return Optional.of(node);
            }
        }
    }

    /** Whether a node is worth a look now; else it waits, or is dropped when all that it holds was seen. */
    boolean isReady(Node node) {
        return isReady(node, now.getAsLong());
    }

    private boolean isReady(Node node, long then) {
        long due = completion.due(node.lower, node.upper);
        if (due > then && due < Completion.NEVER) {
            waiting.add(new Waiting(node, due));
        }
        return due <= then;
    }

    /** Nothing in these nodes costs less; infinite when there are none. */
    double leastBound() {
        return Stream.concat(open.stream(), waiting.stream().map(Waiting::node))
                .mapToDouble(Node::bound)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
