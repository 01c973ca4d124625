package batchwright.solve;

/** What a search left out that a proof would have needed. Costs in cents. */
final class ProofLedger {
    private double leastLeftOut = Double.POSITIVE_INFINITY;

    /** Something was left out; nothing in it costs less than the bound. */
    void leaveOut(double bound) {
        leastLeftOut = Math.min(leastLeftOut, bound);
    }

    /** Whether nothing was left out. */
    boolean isComplete() {
        return Double.isInfinite(leastLeftOut);
    }

    /**
     * What is proven of everything.
     *
     * @param seen nothing that was not left out costs less than this
     */
    double bound(double seen) {
        return Math.min(seen, leastLeftOut);
    }
}
