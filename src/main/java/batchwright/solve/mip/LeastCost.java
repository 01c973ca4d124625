package batchwright.solve.mip;

import java.util.Arrays;

/**
 * The least cost of a model whose columns need not be whole, under changing bounds, with the multipliers of the rows as given that prove
 * it: for every point that keeps the rows and bounds, the cost is at least the sum of multiplier x row and of what is left of the costs x
 * column.
 */
public final class LeastCost {
    private final DualSimplex relaxation;
    private final double[] scales;

    /** @param stop told of all work */
    public LeastCost(MipModel model, Stop stop) {
        this.relaxation = new DualSimplex(model, stop);
        this.scales = model.rows().stream().mapToDouble(LeastCost::scale).toArray();
    }

    private static double scale(Row row) {
        return 1 / Arrays.stream(row.coefficients()).map(Math::abs).max().orElse(1);
    }

    /**
     * What came out.
     *
     * @param cost about; infinite when no point keeps the rows
     * @param values of the columns; none without a point
     * @param multipliers of the rows as given
     */
    public record Answer(double cost, double[] values, double[] multipliers) {
        public boolean isPoint() {
            return cost < Double.POSITIVE_INFINITY;
        }
    }

    /**
     * @param lower bounds of the columns, none above the upper ones
     * @param enough what the multipliers are to prove where no point keeps the rows, so that anything could be proven
     */
    public Answer within(double[] lower, double[] upper, double enough) {
        if (relaxation.solve(lower, upper) == Relaxation.Status.OPTIMAL) {
            return new Answer(relaxation.cost(), relaxation.values(), asGiven(relaxation.multipliers(), 1));
        }
        DualSimplex.Contradiction found = relaxation.contradiction();
        return new Answer(Double.POSITIVE_INFINITY, new double[0], asGiven(found.multipliers(), enough / found.by()));
    }

    /** No more than the least cost, after so many pivots at most; infinite when no point keeps the rows. */
    double guess(double[] lower, double[] upper, int mostPivots) {
        return relaxation.solveLimited(lower, upper, mostPivots) == Relaxation.Status.OPTIMAL
                ? relaxation.cost()
                : Double.POSITIVE_INFINITY;
    }

    private double[] asGiven(double[] ofScaledRows, double times) {
        double[] given = new double[ofScaledRows.length];
        for (int i = 0; i < given.length; i++) {
            given[i] = ofScaledRows[i] * scales[i] * times;
        }
        return given;
    }
}
