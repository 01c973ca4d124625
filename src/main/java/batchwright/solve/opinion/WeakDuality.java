package batchwright.solve.opinion;

import batchwright.solve.mip.Column;
import batchwright.solve.mip.MipModel;
import batchwright.solve.mip.Row;
import java.util.Arrays;

/**
 * What row multipliers prove, whoever made them: for every point that keeps the rows, the cost is at least the sum of multiplier x row
 * limit and of reduced cost x column bound. Any multipliers give a true bound; good ones a high bound.
 */
final class WeakDuality {
    /** A share of all that is added up, taken off for rounding. */
    private static final double ROUNDING = 1e-9;

    private WeakDuality() {}

    /** No point of the model costs less [minor units]; negative infinity when these multipliers prove nothing. */
    static double bound(MipModel model, double[] multipliers) {
        double[] opposite = Arrays.stream(multipliers).map(m -> -m).toArray();
        return Math.max(proven(model, multipliers), proven(model, opposite));
    }

    private static double proven(MipModel model, double[] multipliers) {
        double[] reduced = model.costs();
        double sum = model.costOffset();
        double size = Math.abs(sum);
        for (int i = 0; i < multipliers.length; i++) {
            Row row = model.rows().get(i);
            double limit = multipliers[i] > 0 ? row.lower() : row.upper();
            if (multipliers[i] == 0 || Double.isInfinite(limit)) {
                continue;
            }
            sum += multipliers[i] * limit;
            size += Math.abs(multipliers[i] * limit);
            for (int k = 0; k < row.columns().length; k++) {
                reduced[row.columns()[k]] -= multipliers[i] * row.coefficients()[k];
            }
        }
        for (Column column : model.columns()) {
            double factor = reduced[column.index()];
            if (factor != 0) {
                double least = factor * (factor > 0 ? column.lower() : column.upper());
                sum += least;
                size += Math.abs(least);
            }
        }
        return Double.isFinite(sum) ? sum - ROUNDING * size : Double.NEGATIVE_INFINITY;
    }
}
