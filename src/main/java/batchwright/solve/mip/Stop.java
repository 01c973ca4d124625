package batchwright.solve.mip;

import java.util.function.BooleanSupplier;

/** Tells a search when to stop. */
@FunctionalInterface
public interface Stop {
    /** For what is never to be ended. */
    Stop NEVER = () -> false;

    /** Asked once at each node: whether to stop there, to go on later perhaps. May count how often it is asked. */
    boolean now();

    /** Asked within a node too, as often as may be: whether somebody waits for the end, so that nothing long is begun. */
    default boolean atOnce() {
        return false;
    }

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
        Stop self = this;
        return new Stop() {
            @Override
            public boolean now() {
                return also.getAsBoolean() || self.now();
            }

            @Override
            public boolean atOnce() {
                return self.atOnce();
            }

            @Override
            public void spend(long work) {
                self.spend(work);
            }
        };
    }
}
