package batchwright.solve.mip;

/** The linear relaxation of one model, solved again and again under changing column bounds. Not thread-safe. */
interface Relaxation {
    /** Whether a point keeps every row within these bounds; if so, the cheapest is held until the next call. */
    Status solve(double[] lower, double[] upper);

    /**
     * As {@link #solve}, but stops after so many pivots: then {@link #cost} is a lower bound of the least cost, and the values
     * mean nothing.
     */
    Status solveLimited(double[] lower, double[] upper, int mostPivots);

    /** Least cost; only after {@link Status#OPTIMAL}. */
    double cost();

    /** A cheapest point, by column index; only after {@link Status#OPTIMAL}. */
    double[] values();

    /** By how much the bound {@link #cost} rises per unit that a column moves off its bound, by column index; after cost. */
    double[] reducedCosts();

    /** Outcome of one solve. */
    enum Status {
        OPTIMAL,
        INFEASIBLE,
        UNBOUNDED
    }
}
