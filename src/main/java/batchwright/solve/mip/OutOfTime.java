package batchwright.solve.mip;

/**
 * Ends a search from within, when no more work may be done. Only a {@link Stop} throws it, and {@link BranchAndBound#search} turns it
 * into a result; a search that was ended so is not to be gone on with.
 */
public final class OutOfTime extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Without a trace of where: it is not a fault, and may be thrown often. */
    public OutOfTime() {
        super("out of time", null, false, false);
    }
}
