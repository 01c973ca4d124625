package batchwright.solve.mip;

/** Counts how often a relaxation is solved. */
final class CountingRelaxation implements Relaxation {
    private final Relaxation relaxation;
    private long solved;

    CountingRelaxation(Relaxation relaxation) {
        this.relaxation = relaxation;
    }

    long solved() {
        return solved;
    }

    @Override
    public Status solve(double[] lower, double[] upper) {
        solved++;
        return relaxation.solve(lower, upper);
    }

    @Override
    public Status solveLimited(double[] lower, double[] upper, int mostPivots) {
        solved++;
        return relaxation.solveLimited(lower, upper, mostPivots);
    }

    @Override
    public double cost() {
        return relaxation.cost();
    }

    @Override
    public double[] values() {
        return relaxation.values();
    }

    @Override
    public double[] reducedCosts() {
        return relaxation.reducedCosts();
    }
}
