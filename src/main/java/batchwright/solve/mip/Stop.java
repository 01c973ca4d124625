package batchwright.solve.mip;

import java.util.function.BooleanSupplier;

/** Tells a search when to stop. */
@FunctionalInterface
public interface Stop {
    /** Asked once at each node: whether to stop there. May count how often it is asked. */
    boolean now();

    /** Asked within a node too, as often as may be: whether somebody waits for the end, so that nothing long is begun. */
    default boolean atOnce() {
        return false;
    }

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
        };
    }
}
