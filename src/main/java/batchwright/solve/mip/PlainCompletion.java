package batchwright.solve.mip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** For a model that says everything: its whole columns rounded are the solution, if they still keep every row. */
public final class PlainCompletion implements Completion<double[]> {
    /** Far below what is printed, far above what rounding to doubles does. */
    private static final double TOLERANCE = 1e-7;

    private final MipModel model;
    private final List<Column> wholeColumns;

    public PlainCompletion(MipModel model) {
        this.model = model;
        this.wholeColumns = model.columns().stream().filter(Column::whole).toList();
    }

    @Override
    public Verdict<double[]> complete(Point point, double cutoff) {
        double[] x = rounded(point.values());
        if (model.brokenBy(x, TOLERANCE).isEmpty()) {
            return Verdict.closed(model.costOf(x), x);
        }
        return new Verdict<>(Optional.empty(), brokenByRounding(point));
    }

    /** Where to look when the rounded point breaks a row: elsewhere, and once more at its whole columns, unless that was done. */
    public List<Subproblem> brokenByRounding(Point point) {
        List<Subproblem> subproblems = new ArrayList<>(othersThan(point));
        if (wholeColumns.stream().anyMatch(c -> point.lower()[c.index()] < point.upper()[c.index()])) {
            // Rounding a whole column may ask a little more of the other ones than they have in this point.
            subproblems.add(Subproblems.only(wholeColumns, point.values()));
        }
        return subproblems;
    }

    /** The values with every whole column at its whole number. */
    public double[] rounded(double[] values) {
        double[] x = values.clone();
        for (Column c : wholeColumns) {
            x[c.index()] = Math.rint(x[c.index()]);
        }
        return x;
    }

    /** Whether rounded values keep every row and bound. */
    public boolean keepsAll(double[] rounded) {
        return model.brokenBy(rounded, TOLERANCE).isEmpty();
    }

    /** The same point with less of these columns, one after the other, as long as every row and bound is kept. */
    public double[] trimmed(double[] rounded, List<Column> columns) {
        double[] x = rounded.clone();
        if (keepsAll(x)) {
            for (Column c : columns) {
                do {
                    x[c.index()]--;
                } while (keepsAll(x));
                x[c.index()]++;
            }
        }
        return x;
    }

    /** Everything but this point. */
    public List<Subproblem> othersThan(Point point) {
        return Subproblems.allBut(wholeColumns, point);
    }
}
