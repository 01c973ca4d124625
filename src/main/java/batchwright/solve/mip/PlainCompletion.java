package batchwright.solve.mip;

import java.util.Optional;
import java.util.OptionalInt;

/** For a model that says everything: its whole columns rounded are the solution, if they still keep every row. */
public final class PlainCompletion implements Completion<double[]> {
    /** Far below what is printed, far above what rounding to doubles does. */
    private static final double TOLERANCE = 1e-7;

    private final MipModel model;

    public PlainCompletion(MipModel model) {
        this.model = model;
    }

    @Override
    public Verdict<double[]> complete(double[] values, double[] lower, double[] upper, double bound, double cutoff) {
        double[] x = rounded(values);
        if (model.brokenBy(x, TOLERANCE).isEmpty()) {
            return Verdict.closed(model.costOf(x), x);
        }
        OptionalInt free = free(lower, upper, values);
        return free.isPresent() ? Verdict.split(Optional.empty(), free.getAsInt()) : Verdict.closed(Optional.empty());
    }

    /** The values with every whole column at its whole number. */
    public double[] rounded(double[] values) {
        double[] x = values.clone();
        for (Column c : model.columns()) {
            if (c.whole()) {
                x[c.index()] = Math.rint(x[c.index()]);
            }
        }
        return x;
    }

    /** Whether rounded values keep every row and bound. */
    public boolean keepsAll(double[] rounded) {
        return model.brokenBy(rounded, TOLERANCE).isEmpty();
    }

    /** The whole column that is not fixed yet and was furthest from whole; empty when all are fixed. */
    public OptionalInt free(double[] lower, double[] upper, double[] values) {
        int best = -1;
        double furthest = -1;
        for (Column c : model.columns()) {
            int j = c.index();
            double distance = Math.abs(values[j] - Math.rint(values[j]));
            if (c.whole() && lower[j] < upper[j] && distance > furthest) {
                best = j;
                furthest = distance;
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }
}
