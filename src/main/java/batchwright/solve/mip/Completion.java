package batchwright.solve.mip;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Turns a whole-numbered point of the model into a solution. A model may say less than everything (days left out of
 * account, say); then this is where the rest is settled, and where the search learns that a point cannot be completed.
 */
public interface Completion<S> {
    /**
     * @param values a cheapest point of the node, whole where it must be
     * @param lower the node's column bounds; must not be changed
     * @param upper the node's column bounds; must not be changed
     * @param bound least cost in the node
     * @param cutoff only a solution that costs less is of use
     */
    Verdict<S> complete(double[] values, double[] lower, double[] upper, double bound, double cutoff);

    /** A solution with its cost. */
    record Found<S>(double cost, S solution) {}

    /**
     * What became of a node.
     *
     * @param found the best solution found in it, if any
     * @param splitColumn empty when nothing better is left in the node; otherwise the whole column to split it on
     */
    record Verdict<S>(Optional<Found<S>> found, OptionalInt splitColumn) {
        public static <S> Verdict<S> closed(double cost, S solution) {
            return new Verdict<>(Optional.of(new Found<>(cost, solution)), OptionalInt.empty());
        }

        public static <S> Verdict<S> closed(Optional<Found<S>> found) {
            return new Verdict<>(found, OptionalInt.empty());
        }

        public static <S> Verdict<S> split(Optional<Found<S>> found, int column) {
            return new Verdict<>(found, OptionalInt.of(column));
        }
    }
}
