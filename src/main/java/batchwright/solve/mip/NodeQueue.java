package batchwright.solve.mip;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/**
 * The open nodes of a search: those that are ready, the least bound first, and those that are postponed until so many relaxations
 * are solved, because others should come first.
 */
final class NodeQueue {
    private static final Comparator<Node> LEAST_BOUND_FIRST = Comparator.comparingDouble(Node::bound)
            .thenComparing(Comparator.comparingLong(Node::id).reversed());
    private static final Comparator<Postponed> SOONEST_FIRST =
            Comparator.comparingLong(Postponed::until).thenComparingLong(p -> p.node.id);

    private final ToLongFunction<Node> postponedUntil;
    private final LongSupplier clock;
    private final PriorityQueue<Node> ready = new PriorityQueue<>(LEAST_BOUND_FIRST);
    private final PriorityQueue<Postponed> postponed = new PriorityQueue<>(SOONEST_FIRST);

    /**
     * A part of what is searched.
     *
     * @param lower bounds of the columns
     * @param upper bounds of the columns
     * @param bound nothing in it costs less
     */
    record Node(double[] lower, double[] upper, double bound, long id) {}

    private record Postponed(Node node, long until) {}

    /**
     * @param postponedUntil the time before which a node should not be looked at; {@link Completion#NEVER} when all that it holds
     *     was seen
     * @param clock the time: relaxations solved so far
     */
    NodeQueue(ToLongFunction<Node> postponedUntil, LongSupplier clock) {
        this.postponedUntil = postponedUntil;
        this.clock = clock;
    }

    void add(Node node) {
        ready.add(node);
    }

    /**
     * Takes out the ready node with the least bound; when all are postponed, the one that is ready soonest; none when all are closed.
     *
     * @param closed whether there is nothing of use in a node
     */
    Optional<Node> next(Predicate<Node> closed) {
        while (true) {
            long time = clock.getAsLong();
            while (!postponed.isEmpty() && postponed.element().until <= time) {
                ready.add(postponed.remove().node);
            }
            if (ready.isEmpty()) {
                if (postponed.isEmpty()) {
                    return Optional.empty();
                }
                Postponed soonest = postponed.remove();
                time = soonest.until;
                ready.add(soonest.node);
            }
            Node node = ready.remove();
            if (!closed.test(node) && isReady(node, time)) {
                return Optional.of(node);
            }
        }
    }

    /** What made nodes wait has changed: all are asked anew. */
    void askPostponedAnew() {
        postponed.forEach(waiting -> ready.add(waiting.node));
        postponed.clear();
    }

    /** Whether a node may be looked at now; else it is postponed, or dropped when all that it holds was seen. */
    boolean isReady(Node node) {
        return isReady(node, clock.getAsLong());
    }

    private boolean isReady(Node node, long time) {
        long until = postponedUntil.applyAsLong(node);
        if (until > time && until < Completion.NEVER) {
            postponed.add(new Postponed(node, until));
        }
        return until <= time;
    }

    /** Nothing in these nodes costs less; infinite when there are none. */
    double leastBound() {
        return Stream.concat(ready.stream(), postponed.stream().map(Postponed::node))
                .mapToDouble(Node::bound)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
