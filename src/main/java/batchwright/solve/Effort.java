package batchwright.solve;

import java.util.function.BooleanSupplier;

/** What a search has spent, over all its levels, and when it must stop. */
final class Effort {
    private final BooleanSupplier stop;
    private long nodes;
    private boolean everythingSeen = true;

    Effort(BooleanSupplier stop) {
        this.stop = stop;
    }

    boolean mustStop() {
        return stop.getAsBoolean();
    }

    void spend(long moreNodes) {
        nodes += moreNodes;
    }

    /** Relaxations solved. */
    long nodes() {
        return nodes;
    }

    /** Something was left out that a proof would have needed. */
    void leftSomethingOut() {
        everythingSeen = false;
    }

    boolean everythingSeen() {
        return everythingSeen;
    }
}
