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
     * A heuristic: a solution near a whole-numbered point that is not the cheapest of its node, if one is soon found. Proves nothing.
     *
     * @param point its bound is unknown
     */
    default Optional<Found<S>> heuristic(Point point, double cutoff) {
        return complete(point, cutoff).found();
    }

    /** Of a node that needs no look. */
    long NEVER = Long.MAX_VALUE;

    /**
     * Until when a node should be postponed, in {@linkplain Point#relaxations() relaxations}: not at all unless others should come
     * first, {@link #NEVER} when all that it holds was seen.
     *
     * @param lower the node's column bounds; must not be changed
     * @param upper the node's column bounds; must not be changed
     */
    default long postponedUntil(double[] lower, double[] upper) {
        return 0;
    }

    /** Relaxations solved in completing points so far; the clock counts them too. */
    default long relaxations() {
        return 0;
    }

    /**
     * A cheapest point of a node.
     *
     * @param values whole where it must be
     * @param lower the node's column bounds; must not be changed
     * @param upper the node's column bounds; must not be changed
     * @param bound least cost in the node
     * @param relaxations solved so far, by the search and in completing points
     */
    record Point(double[] values, double[] lower, double[] upper, double bound, long relaxations) {}

    /** A solution with its cost. */
    record Found<S>(double cost, S solution) {}

    /**
     * A part of a node: some columns confined.
     *
     * @param bound nothing in it costs less, as far as the completion knows
     */
    record Subproblem(List<ColumnRange> columns, double bound) {
        public Subproblem(List<ColumnRange> columns) {
            this(columns, Double.NEGATIVE_INFINITY);
        }

        public Subproblem bounded(double knownBound) {
            return new Subproblem(columns, knownBound);
        }
    }

    /** A column confined to a range. */
    record ColumnRange(Column column, double lower, double upper) {}

    /**
     * What became of a node.
     *
     * @param found the best solution found in it, if any
     * @param subproblems where something better than {@code found} may still be; empty when nowhere
     */
    record Verdict<S>(Optional<Found<S>> found, List<Subproblem> subproblems) {
        public static <S> Verdict<S> closed(double cost, S solution) {
            return new Verdict<>(Optional.of(new Found<>(cost, solution)), List.of());
        }

        public static <S> Verdict<S> closed(Optional<Found<S>> found) {
            return new Verdict<>(found, List.of());
        }
    }
}
