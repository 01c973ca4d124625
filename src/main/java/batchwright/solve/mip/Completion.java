package batchwright.solve.mip;

import java.util.List;
import java.util.Optional;

/**
 * Turns a whole-numbered point of the model into a solution. A model may say less than everything (days left out of
 * account, say); then this is where the rest is settled, and where the search learns that a point cannot be completed.
 */
public interface Completion<S> {
    /** @param cutoff only a solution that costs less is of use */
    Verdict<S> complete(Point point, double cutoff);

    /**
     * A solution near a whole-numbered point that is not the cheapest of its node, if one is soon found. Proves nothing.
     *
     * @param point its bound is unknown
     */
    default Optional<Found<S>> tryOut(Point point, double cutoff) {
        return complete(point, cutoff).found();
    }

    /** Of a node that needs no look. */
    long NEVER = Long.MAX_VALUE;

    /**
     * When a node is worth a look, by the clock of {@link Point#now()}: at once unless others should come first, {@link #NEVER} when
     * all that it holds was seen.
     *
     * @param lower the node's column bounds; must not be changed
     * @param upper the node's column bounds; must not be changed
     */
    default long due(double[] lower, double[] upper) {
        return 0;
    }

    /** Relaxations solved in completing points so far; the clock counts them too. */
    default long spent() {
        return 0;
    }

    /**
     * A cheapest point of a node.
     *
     * @param values whole where it must be
     * @param lower the node's column bounds; must not be changed
     * @param upper the node's column bounds; must not be changed
     * @param bound least cost in the node
     * @param now relaxations solved so far, by the search and in completing points
     */
    record Point(double[] values, double[] lower, double[] upper, double bound, long now) {
    }

    /** A solution with its cost. */
    record Found<S>(double cost, S solution) {}

    /**
     * A part of a node: some columns confined.
     *
     * @param bound nothing in it costs less, as far as the completion knows
     */
    record Part(List<Confined> columns, double bound) {
        public Part(List<Confined> columns) {
            this(columns, Double.NEGATIVE_INFINITY);
        }

        public Part bounded(double knownBound) {
            return new Part(columns, knownBound);
        }
    }

    /** A column confined to a range. */
    record Confined(Column column, double lower, double upper) {}

    /**
     * What became of a node.
     *
     * @param found the best solution found in it, if any
     * @param parts where something better than {@code found} may still be; empty when nowhere
     */
    record Verdict<S>(Optional<Found<S>> found, List<Part> parts) {
        public static <S> Verdict<S> closed(double cost, S solution) {
            return new Verdict<>(Optional.of(new Found<>(cost, solution)), List.of());
        }

        public static <S> Verdict<S> closed(Optional<Found<S>> found) {
            return new Verdict<>(found, List.of());
        }
    }
}
