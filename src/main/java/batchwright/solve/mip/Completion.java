package batchwright.solve.mip;

import java.util.List;
import java.util.Optional;

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

    /**
     * A solution near a whole-numbered point that is not the cheapest of its node, if one is soon found. Proves nothing.
     *
     * @param values as for {@link #complete}, within the bounds
     */
    default Optional<Found<S>> tryOut(double[] values, double[] lower, double[] upper, double cutoff) {
        return complete(values, lower, upper, Double.NEGATIVE_INFINITY, cutoff).found();
    }

    /** A solution with its cost. */
    record Found<S>(double cost, S solution) {}

    /**
     * A part of a node: some columns confined.
     *
     * @param later not worth a look before everything else has had one
     */
    record Part(List<Confined> columns, boolean later) {
        public Part(List<Confined> columns) {
            this(columns, false);
        }

        public Part putOff() {
            return new Part(columns, true);
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
