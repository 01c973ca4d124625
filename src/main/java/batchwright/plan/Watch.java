package batchwright.plan;

import batchwright.quantity.Money;

/** Looks on while a planner searches, and may stop it. A planner calls it from the thread that asked for the plan. */
public interface Watch {
    /** Sees nothing and never stops. */
    Watch NONE = new Watch() {
        @Override
        public void found(Money cost) {}

        @Override
        public void bound(Money bound) {}

        @Override
        public boolean stop() {
            return false;
        }
    };

    /** A plan of this cost was found, the cheapest so far. */
    void found(Money cost);

    /** It is proven that no plan costs less than this. */
    void bound(Money bound);

    /** Whether to stop now and answer with the best so far; asked very often. */
    boolean stop();
}
