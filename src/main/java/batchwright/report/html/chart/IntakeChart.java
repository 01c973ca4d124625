package batchwright.report.html.chart;

import batchwright.report.html.chart.Svg.Anchor;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What was eaten over time: a column for each day or week, what was weighed out below, other food on top, and a line at the target. Where
 * nothing is known there is no column.
 *
 * @param columns the earliest first
 * @param target kcal a day
 * @param from what stands below the first column
 * @param to what stands below the last one
 */
public record IntakeChart(List<Column> columns, OptionalDouble target, String from, String to) {
    private static final double LEFT = 44;
    private static final double RIGHT = Svg.WIDTH - 56.0;
    private static final double TOP = 20;
    private static final double BOTTOM = 160;
    private static final double STEP = 1000;
    /** Of the width that is one column's. */
    private static final double FILLED = 0.8;

    public IntakeChart {
        columns = List.copyOf(columns);
    }

    /** kcal a day; both 0 when nothing is known. */
    public record Column(double planned, double other) {}

    public Svg draw(String says) {
        double most = Math.max(
                target.orElse(0),
                columns.stream().mapToDouble(c -> c.planned + c.other).max().orElse(0));
        double top = Math.max(STEP, Math.ceil(most / STEP) * STEP);
        double perKcal = (BOTTOM - TOP) / top;
        Svg svg = new Svg(BOTTOM + 24, says);
        svg.text(LEFT - 6, TOP - 8, Anchor.END, "small", "kcal");
        for (double value = 0; value <= top + 1; value += STEP) {
            double y = BOTTOM - value * perKcal;
            svg.line(LEFT, y, RIGHT, y, value == 0 ? "axis" : "grid");
            svg.text(LEFT - 6, y + 4, Anchor.END, "small", Long.toString(Math.round(value)));
        }
        double width = (RIGHT - LEFT) / Math.max(1, columns.size());
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            double x = LEFT + width * (i + (1 - FILLED) / 2);
            double planned = column.planned * perKcal;
            double other = column.other * perKcal;
            svg.rectangle(x, BOTTOM - planned, width * FILLED, planned, "bar");
            svg.rectangle(x, BOTTOM - planned - other, width * FILLED, other, "dish1");
        }
        target.ifPresent(kcal -> {
            double y = BOTTOM - kcal * perKcal;
            svg.line(LEFT, y, RIGHT, y, "axis");
            svg.text(RIGHT + 6, y + 4, Anchor.START, "small", "target");
        });
        svg.text(LEFT, BOTTOM + 16, Anchor.START, "small", from);
        svg.text(RIGHT, BOTTOM + 16, Anchor.END, "small", to);
        return svg;
    }
}
