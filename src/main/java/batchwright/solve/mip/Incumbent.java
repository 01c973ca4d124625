package batchwright.solve.mip;

import java.util.Optional;

/**
 * The best solution so far, and the cutoff: what costs as much or more is of no use. A cutoff may be given without a solution.
 *
 * @param <S> what a solution is to the caller
 */
final class Incumbent<S> {
    private static final double COST = 1e-6;

    /** Costs are whole multiples of this; 0 when they may be anything. */
    private final double costStep;

    private double cutoff;
    private Optional<S> solution = Optional.empty();

    Incumbent(double costStep, double cutoff) {
        this.costStep = costStep;
        this.cutoff = cutoff;
    }

    double cutoff() {
        return cutoff;
    }

    Optional<S> solution() {
        return solution;
    }

    /** Of the solution; infinite when there is none. */
    double cost() {
        return solution.isPresent() ? cutoff : Double.POSITIVE_INFINITY;
    }

    /** A dearer solution that was found is forgotten. */
    void lowerCutoff(double to) {
        if (to < cutoff) {
            cutoff = to;
            solution = Optional.empty();
        }
    }

    /** The solution that the cutoff stands for. */
    void set(S known) {
        solution = Optional.of(known);
    }

    /** Takes what is cheaper. */
    void offer(Completion.Found<S> found) {
        if (found.cost() < cutoff - COST) {
            cutoff = found.cost();
            solution = Optional.of(found.solution());
        }
    }

    /** Whether nothing of use costs so much. */
    boolean closes(double bound) {
        return bound > highestOfUse();
    }

    /** The most that a solution of use costs. */
    double highestOfUse() {
        return cutoff - Math.max(COST, costStep / 2);
    }

    /** The least cost of a solution that costs at least so much. */
    double roundedUp(double bound) {
        return costStep > 0 && Double.isFinite(bound) ? Math.ceil(bound / costStep - COST) * costStep : bound;
    }
}
