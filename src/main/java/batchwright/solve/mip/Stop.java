package batchwright.solve.mip;

import java.util.function.BooleanSupplier;

/** Tells a search when to stop, and is told what the search does. Asking changes nothing: what is spent is told by the methods that say so. */
@FunctionalInterface
public interface Stop {
    /** For what is never to be ended. */
    Stop NEVER = () -> false;

    /** Asked at each node but the first: whether to stop there, to go on later perhaps. */
    boolean requested();

    /** Asked within a node too: whether somebody waits for the end, so that nothing long is begun. */
    default boolean urgent() {
        return false;
    }

    /** Told of each node but the first that is looked at. */
    default void spendNode() {}

    /** Told of each relaxation besides that of the node: a column tried out, a step of a dive, a round of cuts. */
    default void spendTrial() {}

    /**
     * Told before anything that takes long in a large model, wherever that is: within a relaxation, too. No single piece of work is
     * longer than what a pass over the tableau or over all rows takes.
     *
     * @param work about how many numbers are looked at
     * @throws OutOfTime when nothing more may be done; the search is over then
     */
    default void spend(long work) {}

    /** The same, and for one more reason. */
    default Stop or(BooleanSupplier also) {
        return new StopAlso(this, also, () -> {});
    }

    /** The same, and when so many nodes were looked at. */
    default Stop within(StepBudget nodes) {
        return new StopAlso(this, nodes::isSpent, nodes::spend);
    }
}
