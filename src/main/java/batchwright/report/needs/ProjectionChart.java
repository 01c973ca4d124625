package batchwright.report.needs;

import batchwright.needs.projection.ProjectedWeek;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Weight over the weeks, drawn in plain characters: a line, and around it the band of what may well be. The ends carry their
 * figures and what they mean, so that no legend has to be looked up.
 */
final class ProjectionChart {
    private static final char LINE = '#';
    private static final char BAND = ':';
    private static final int MOST_COLUMNS = 48;
    private static final int MOST_ROWS = 17;
    /** A row stands for so many kg; every second row has its figure. */
    private static final List<Double> KG_A_ROW = List.of(0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 25.0);
    /** The axis has a figure every so many weeks. */
    private static final List<Integer> WEEKS_A_FIGURE = List.of(1, 2, 4, 13);

    private static final int FIGURE_COLUMNS = 4;
    private static final String MARGIN = "       ";

    private final List<ProjectedWeek> path;
    private final int weeks;
    /** From week 0 to the last one. */
    private final int columns;

    private final double kgARow;
    private final long lowestRow;
    /** From the lowest to the highest. */
    private final List<char[]> rows = new ArrayList<>();

    private ProjectionChart(List<ProjectedWeek> path) {
        this.path = path;
        this.weeks = path.size() - 1;
        this.columns = weeks > MOST_COLUMNS / 2 ? MOST_COLUMNS : MOST_COLUMNS / weeks * weeks;
        double least = path.stream().mapToDouble(ProjectionChart::least).min().orElseThrow();
        double most = path.stream().mapToDouble(ProjectionChart::most).max().orElseThrow();
        this.kgARow = KG_A_ROW.stream()
                .filter(kg -> Math.round(most / kg) - Math.round(least / kg) < MOST_ROWS)
                .findFirst()
                .orElseThrow();
        this.lowestRow = Math.round(least / kgARow);
        for (long row = lowestRow; row <= Math.round(most / kgARow); row++) {
            rows.add(" ".repeat(columns + 1).toCharArray());
        }
    }

    /** @param path at least two weeks, now being the first */
    static List<String> lines(List<ProjectedWeek> path) {
        var chart = new ProjectionChart(path);
        chart.draw();
        return chart.lines();
    }

    private static double most(ProjectedWeek week) {
        return week.heaviest().weightKg();
    }

    private static double likely(ProjectedWeek week) {
        return week.likely().weightKg();
    }

    private static double least(ProjectedWeek week) {
        return week.lightest().orElse(week.likely()).weightKg();
    }

    private void draw() {
        for (int column = 0; column <= columns; column++) {
            double week = (double) column / columns * weeks;
            for (int row = row(at(week, ProjectionChart::least)); row <= row(at(week, ProjectionChart::most)); row++) {
                rows.get(row)[column] = BAND;
            }
            rows.get(row(at(week, ProjectionChart::likely)))[column] = LINE;
        }
    }

    /** Between two weeks on a straight line. */
    private double at(double week, ToDoubleFunction<ProjectedWeek> kg) {
        int before = Math.min((int) week, weeks - 1);
        double from = kg.applyAsDouble(path.get(before));
        double to = kg.applyAsDouble(path.get(before + 1));
        return from + (week - before) * (to - from);
    }

    private int row(double kg) {
        return Math.toIntExact(Math.round(kg / kgARow) - lowestRow);
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("    kg");
        for (int row = rows.size() - 1; row >= 0; row--) {
            lines.add(figure(row) + " |" + new String(rows.get(row)) + meaning(row));
        }
        lines.add(MARGIN + "+" + ticks());
        lines.add(MARGIN + " " + weekFigures());
        return lines;
    }

    private String figure(int row) {
        long counted = lowestRow + row;
        String figure = counted % 2 == 0 ? Show.plainText(BigDecimal.valueOf(counted * kgARow), 1) : "";
        return " ".repeat(MARGIN.length() - 1 - figure.length()) + figure;
    }

    /** What stands to the right of an end of the line or the band. */
    private String meaning(int row) {
        ProjectedWeek last = path.get(weeks);
        if (row == row(likely(last))) {
            return " " + Show.oneDecimal(likely(last)) + " as estimated";
        }
        if (row == row(most(last))) {
            return " " + Show.oneDecimal(most(last)) + " if you need less";
        }
        return row == row(least(last)) && last.lightest().isPresent()
                ? " " + Show.oneDecimal(least(last)) + " if you need more"
                : "";
    }

    private int column(int week) {
        return Math.toIntExact(Math.round((double) week / weeks * columns));
    }

    /** Weeks with a figure; the last always has one. */
    private List<Integer> figures() {
        int step = WEEKS_A_FIGURE.stream()
                .filter(each -> column(each) >= FIGURE_COLUMNS)
                .findFirst()
                .orElseThrow();
        List<Integer> figures = new ArrayList<>();
        for (int week = 0; column(weeks) - column(week) >= FIGURE_COLUMNS; week += step) {
            figures.add(week);
        }
        figures.add(weeks);
        return figures;
    }

    private String ticks() {
        char[] axis = "-".repeat(columns + 1).toCharArray();
        figures().forEach(week -> axis[column(week)] = '+');
        return new String(axis);
    }

    private String weekFigures() {
        var line = new StringBuilder();
        figures()
                .forEach(week ->
                        line.append(" ".repeat(column(week) - line.length())).append(week));
        return line.append(weeks == 1 ? "  week" : "  weeks").toString();
    }
}
