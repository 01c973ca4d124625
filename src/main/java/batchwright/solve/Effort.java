package batchwright.solve;

import batchwright.solve.mip.SearchResult;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/** What a search has spent, over all its levels, when it must stop, and what it had to leave out. */
final class Effort {
    private final BooleanSupplier stop;
    private final AtomicLong nodes;
    private double leastLeftOut = Double.POSITIVE_INFINITY;

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

    /** A side search of just so many steps, whatever the clock says: its outcome depends on the files alone. */
    Effort steps(long steps) {
        long[] left = {steps};
        return new Effort(() -> left[0]-- <= 0, nodes);
    }

    boolean mustStop() {
        return stop.getAsBoolean();
    }

    /** Takes account of what a search has spent. */
    void count(SearchResult<?> search) {
        nodes.addAndGet(search.nodes());
    }

    /** Something that a proof would have needed was left out; nothing in it costs less than the bound. */
    void leaveOut(double bound) {
        leastLeftOut = Math.min(leastLeftOut, bound);
    }

    /** Nothing that was left out costs less than this; infinite when everything was seen. */
    double leastLeftOut() {
        return leastLeftOut;
    }

    /** Relaxations solved. */
    long nodes() {
        return nodes.get();
    }
}
