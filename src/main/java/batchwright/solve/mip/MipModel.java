package batchwright.solve.mip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;

/** A minimisation: columns with bounds, rows with ranges, a linear cost. Built once, then only read. */
public final class MipModel {
    /** Putting a term together takes as long as looking at this many numbers of a tableau. */
    private static final long WORK_OF_A_TERM = 100;

    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private Expression cost = new Expression();
    private double costStep;
    /** Rows that say something of their own; those after them follow from these. */
    private int cuts;

    private final Stop stop;

    public MipModel() {
        this(Stop.NEVER);
    }

    /** @param stop told of the work of making it */
    public MipModel(Stop stop) {
        this.stop = stop;
    }

    public Column column(String name, double lower, double upper, boolean whole, int rank) {
        stop.spend(WORK_OF_A_TERM);
        var column = new Column(columns.size(), name, lower, upper, whole, rank);
        columns.add(column);
        return column;
    }

    /** lower <= expression <= upper; an infinite end is no limit. */
    public void row(String name, Expression expression, double lower, double upper) {
        var indices = new ArrayList<Integer>();
        var coefficients = new ArrayList<Double>();
        stop.spend(WORK_OF_A_TERM * (1 + expression.size()));
        expression.forEach((column, coefficient) -> {
            indices.add(column.index());
            coefficients.add(coefficient);
        });
        rows.add(new Row(
                name,
                indices.stream().mapToInt(Integer::intValue).toArray(),
                coefficients.stream().mapToDouble(Double::doubleValue).toArray(),
                lower - expression.constant(),
                upper - expression.constant()));
    }

    public void atLeast(String name, Expression expression, double lower) {
        row(name, expression, lower, Double.POSITIVE_INFINITY);
    }

    public void atMost(String name, Expression expression, double upper) {
        row(name, expression, Double.NEGATIVE_INFINITY, upper);
    }

    /**
     * What to minimise.
     *
     * @param step every reachable cost is a multiple of this (1 for whole cents); 0 when nothing is known. Lets a bound be
     *     rounded up.
     */
    public void minimise(Expression expression, double step) {
        cost = expression;
        costStep = step;
    }

    public List<Column> columns() {
        return Collections.unmodifiableList(columns);
    }

    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    public int rowCount() {
        return rows.size();
    }

    public List<String> rowNames() {
        return rows.stream().map(Row::name).toList();
    }

    double costStep() {
        return costStep;
    }

    public double costOffset() {
        return cost.constant();
    }

    /** What a unit of each column costs. */
    public double[] costs() {
        var costs = new double[columns.size()];
        cost.forEach((column, coefficient) -> costs[column.index()] += coefficient);
        return costs;
    }

    /** The same columns, rows and cost, with rows that follow from them for whole columns. */
    MipModel withCuts(List<Cut> add) {
        var model = new MipModel();
        model.columns.addAll(columns);
        model.rows.addAll(rows);
        model.cost = cost;
        model.costStep = costStep;
        model.cuts = add.size();
        for (Cut cut : add) {
            int[] index = java.util.stream.IntStream.range(0, columns.size())
                    .filter(j -> cut.coefficients()[j] != 0)
                    .toArray();
            model.rows.add(new Row(
                    "cut",
                    index,
                    java.util.Arrays.stream(index)
                            .mapToDouble(j -> cut.coefficients()[j])
                            .toArray(),
                    cut.least(),
                    Double.POSITIVE_INFINITY));
        }
        return model;
    }

    /** For each column, whether raising it can never break a row. */
    boolean[] mayRise() {
        var may = new boolean[columns.size()];
        Arrays.fill(may, true);
        for (Row row : rows.subList(0, rows.size() - cuts)) {
            for (int k = 0; k < row.columns().length; k++) {
                double a = row.coefficients()[k];
                if ((a > 0 && row.upper() < Double.POSITIVE_INFINITY)
                        || (a < 0 && row.lower() > Double.NEGATIVE_INFINITY)) {
                    may[row.columns()[k]] = false;
                }
            }
        }
        return may;
    }

    public double costOf(double[] values) {
        return cost.value(values);
    }

    /**
     * Name of the first bound or row that these values break by more than the tolerance; empty when they keep all. The tolerance is
     * a share of large numbers in rows that have columns which need not be whole: no relaxation is more exact than that.
     */
    public String brokenBy(double[] values, double tolerance) {
        return brokenBy(values, tolerance, name -> false);
    }

    /** The same without the rows of these names. */
    public String brokenBy(double[] values, double tolerance, Predicate<String> leftOut) {
        for (Column c : columns) {
            double v = values[c.index()];
            if (v < c.lower() - tolerance || v > c.upper() + tolerance || (c.whole() && v != Math.rint(v))) {
                return c.name();
            }
        }
        for (Row row : rows) {
            double activity = row.activity(values);
            double slack = tolerance * (isWhole(row) ? 1 : Math.max(1, Math.abs(activity)));
            boolean kept = activity >= row.lower() - slack && activity <= row.upper() + slack;
            if (!kept && !leftOut.test(row.name())) {
                return row.name();
            }
        }
        return "";
    }

    private boolean isWhole(Row row) {
        return Arrays.stream(row.columns()).allMatch(j -> columns.get(j).whole());
    }
}
