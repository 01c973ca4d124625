package batchwright.report.print;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A course over days in plain characters: a line, its band, what was seen, and a line to compare with. A legend stands below.
 *
 * @param unit of the figures
 * @param steps a row may stand for, the smallest first
 */
public record CourseChart(String unit, List<Double> steps, String line, String dots, String compared) {
    private static final char LINE = '#';
    private static final char BAND = ':';
    private static final char DOT = 'o';
    private static final char COMPARED = '-';
    private static final int MOST_COLUMNS = 64;
    private static final int MOST_ROWS = 14;
    private static final int FIGURE = 7;

    /** One day. */
    public record Point(double least, double likely, double most, OptionalDouble seen, OptionalDouble compared) {
        /** The lowest figure of the day. */
        public double lowest() {
            return Math.min(least, Math.min(seen.orElse(least), compared.orElse(least)));
        }

        /** The highest. */
        public double highest() {
            return Math.max(most, Math.max(seen.orElse(most), compared.orElse(most)));
        }
    }

    /**
     * @param points at least one, in order
     * @param from what stands below the first
     * @param to what stands below the last
     */
    public List<String> lines(List<Point> points, String from, String to) {
        double least = points.stream().mapToDouble(Point::lowest).min().orElseThrow();
        double most = points.stream().mapToDouble(Point::highest).max().orElseThrow();
        double step = steps.stream()
                .filter(each -> Math.round(most / each) - Math.round(least / each) < MOST_ROWS)
                .findFirst()
                .orElse((most - least) / (MOST_ROWS - 1));
        long lowest = Math.round(least / step);
        int columns = Math.min(MOST_COLUMNS, points.size());
        List<char[]> rows = new ArrayList<>();
        for (long row = lowest; row <= Math.round(most / step); row++) {
            rows.add(" ".repeat(columns).toCharArray());
        }
        for (int column = 0; column < columns; column++) {
            draw(rows, column, part(points, column, columns), value -> Math.round(value / step) - lowest);
        }
        return text(rows, lowest, step, from, to);
    }

    /** The days that a column stands for. */
    private static List<Point> part(List<Point> points, int column, int columns) {
        int from = column * points.size() / columns;
        int to = Math.max(from + 1, (column + 1) * points.size() / columns);
        return points.subList(from, to);
    }

    private static void draw(List<char[]> rows, int column, List<Point> days, ToDoubleFunction<Double> row) {
        Point day = days.get(days.size() - 1);
        for (int at = (int) row.applyAsDouble(day.least()); at <= (int) row.applyAsDouble(day.most()); at++) {
            rows.get(at)[column] = BAND;
        }
        day.compared().ifPresent(value -> rows.get((int) row.applyAsDouble(value))[column] = COMPARED);
        days.forEach(each -> each.seen().ifPresent(value -> rows.get((int) row.applyAsDouble(value))[column] = DOT));
        rows.get((int) row.applyAsDouble(day.likely()))[column] = LINE;
    }

    private List<String> text(List<char[]> rows, long lowest, double step, String from, String to) {
        int columns = rows.get(0).length;
        List<String> lines = new ArrayList<>(List.of(" ".repeat(FIGURE - unit.length()) + unit));
        for (int row = rows.size() - 1; row >= 0; row--) {
            long counted = lowest + row;
            String figure = counted % 2 == 0 ? Show.plainText(BigDecimal.valueOf(counted * step), 1) : "";
            lines.add(" ".repeat(Math.max(0, FIGURE - figure.length())) + figure + " |" + new String(rows.get(row)));
        }
        lines.add(" ".repeat(FIGURE + 1) + "+" + "-".repeat(columns));
        String ends = columns > from.length() + to.length()
                ? from + " ".repeat(columns - from.length() - to.length()) + to
                : from + " to " + to;
        lines.add(" ".repeat(FIGURE + 2) + ends);
        lines.add(" ".repeat(FIGURE + 2) + LINE + " " + line + "   " + BAND + " 8 of 10"
                + (dots.isEmpty() ? "" : "   " + DOT + " " + dots) + "   " + COMPARED + " " + compared);
        return lines;
    }
}
