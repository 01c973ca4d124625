package batchwright.plan;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;

/** Looks on while a planner searches, and may stop it. A planner calls it from the thread that asked for the plan. */
@FunctionalInterface
public interface Watch {
    /** Sees nothing and never stops. */
    Watch NONE = () -> false;

    /** May stop a search as another may, but is told nothing: the costs of changed requests would only confuse. */
    record StopOnly(Watch watch) implements Watch {
        @Override
        public boolean stop() {
            return watch.stop();
        }

        @Override
        public boolean stop(long work) {
            return watch.stop(work);
        }
    }

    /** The currency of all costs it is told; told first. */
    default void paidIn(Currency currency) {}

    /** A plan of this cost was found, the cheapest so far. */
    default void found(Money cost) {}

    /** It is proven that no plan costs less than this. */
    default void bound(Money bound) {}

    /** A plan that was found is wrong, by a fault of the program, and is not shown; what is wrong with it. */
    default void wrong(String what) {}

    /** Whether to stop now and answer with the best so far; asked very often. */
    boolean stop();

    /**
     * The same, told of the work so far, which is the same on every machine.
     *
     * @param work of this search: about how many numbers it looked at; some hundred millions take a second
     */
    default boolean stop(long work) {
        return stop();
    }
}
