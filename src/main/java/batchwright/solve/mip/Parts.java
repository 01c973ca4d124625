package batchwright.solve.mip;

import batchwright.solve.mip.Completion.Confined;
import batchwright.solve.mip.Completion.Part;
import java.util.ArrayList;
import java.util.List;

/** Ways to cut a node into parts that do not overlap. */
public final class Parts {
    private Parts() {}

    /** Everything but the one point that these columns have now: for each, the earlier ones stay and it differs. */
    public static List<Part> allBut(List<Column> columns, Completion.Point point) {
        double[] values = point.values();
        double[] lower = point.lower();
        double[] upper = point.upper();
        List<Part> parts = new ArrayList<>();
        List<Confined> same = new ArrayList<>();
        for (Column column : columns) {
            int j = column.index();
            double at = Math.rint(values[j]);
            if (at > lower[j]) {
                parts.add(with(same, new Confined(column, lower[j], at - 1)));
            }
            if (at < upper[j]) {
                parts.add(with(same, new Confined(column, at + 1, upper[j])));
            }
            same.add(new Confined(column, at, at));
        }
        return parts;
    }

    /** The one point that these columns have now. */
    public static Part only(List<Column> columns, double[] values) {
        return new Part(columns.stream()
                .map(c -> new Confined(c, Math.rint(values[c.index()]), Math.rint(values[c.index()])))
                .toList());
    }

    private static Part with(List<Confined> some, Confined more) {
        List<Confined> all = new ArrayList<>(some);
        all.add(more);
        return new Part(all);
    }
}
