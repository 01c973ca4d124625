package batchwright.solve;

import batchwright.solve.mip.SearchResult;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/** What a search has spent, over all its levels, and when it must stop. */
final class Effort {
    private final BooleanSupplier stop;
    private final AtomicLong nodes;
    private boolean everythingSeen = true;

    Effort(BooleanSupplier stop) {
        this(stop, new AtomicLong());
    }

    private Effort(BooleanSupplier stop, AtomicLong nodes) {
        this.stop = stop;
        this.nodes = nodes;
    }

    /** A side search of at most so many steps. What it leaves out does not matter for the proof; what it spends counts. */
    Effort limited(long steps) {
        long[] left = {steps};
        return new Effort(() -> left[0]-- <= 0 || mustStop(), nodes);
    }

    boolean mustStop() {
        return stop.getAsBoolean();
    }

    /** Takes account of a search that has ended. */
    void finished(SearchResult<?> search) {
        nodes.addAndGet(search.nodes());
        if (search.state() != SearchResult.State.DONE) {
            everythingSeen = false;
        }
    }

    /** Something was left out that a proof would have needed. */
    void leftSomethingOut() {
        everythingSeen = false;
    }

    boolean everythingSeen() {
        return everythingSeen;
    }

    /** Relaxations solved. */
    long nodes() {
        return nodes.get();
    }
}
