package batchwright.solve.mip;

import batchwright.solve.mip.Completion.ColumnRange;
import batchwright.solve.mip.Completion.Subproblem;
import java.util.ArrayList;
import java.util.List;

/** Ways to divide a node into subproblems that do not overlap. */
public final class Subproblems {
    private Subproblems() {}

    /** Everything but the one point that these columns have now: for each, the earlier ones stay and it differs. */
    public static List<Subproblem> allBut(List<Column> columns, Completion.Point point) {
        double[] values = point.values();
        double[] lower = point.lower();
        double[] upper = point.upper();
        List<Subproblem> subproblems = new ArrayList<>();
        List<ColumnRange> same = new ArrayList<>();
        for (Column column : columns) {
            int j = column.index();
            double at = Math.rint(values[j]);
            if (at > lower[j]) {
                subproblems.add(with(same, new ColumnRange(column, lower[j], at - 1)));
            }
            if (at < upper[j]) {
                subproblems.add(with(same, new ColumnRange(column, at + 1, upper[j])));
            }
            same.add(new ColumnRange(column, at, at));
        }
        return subproblems;
    }

    /** The one point that these columns have now. */
    public static Subproblem only(List<Column> columns, double[] values) {
        return new Subproblem(columns.stream()
                .map(c -> new ColumnRange(c, Math.rint(values[c.index()]), Math.rint(values[c.index()])))
                .toList());
    }

    private static Subproblem with(List<ColumnRange> some, ColumnRange more) {
        List<ColumnRange> all = new ArrayList<>(some);
        all.add(more);
        return new Subproblem(all);
    }
}
