package batchwright.report.html.chart;

import batchwright.report.html.chart.Svg.Anchor;
import batchwright.report.print.CourseChart.Point;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A course over days: a line in its band, what was seen as dots, and a thin line to compare with.
 *
 * @param unit of the figures
 * @param steps of the axis, the smallest first
 * @param from what stands below the first day
 * @param to what stands below the last day
 * @param end what stands beside the end of the line
 * @param compared what the thin line is
 */
public record TrendChart(
        String unit, List<Double> steps, List<Point> points, String from, String to, String end, String compared) {
    private static final double LEFT = 44;
    private static final double RIGHT = Svg.WIDTH - 76.0;
    private static final double TOP = 20;
    private static final double BOTTOM = 180;
    private static final double HEIGHT = 204;
    private static final int MOST_TICKS = 6;
    private static final double LETTERING = 12;

    public Svg draw(String says) {
        double least = points.stream().mapToDouble(Point::lowest).min().orElseThrow();
        double most = points.stream().mapToDouble(Point::highest).max().orElseThrow();
        double step = steps.stream()
                .filter(each -> Math.ceil(most / each) - Math.floor(least / each) < MOST_TICKS)
                .findFirst()
                .orElse((most - least) / 2);
        double bottom = Math.floor(least / step) * step;
        double top = Math.max(bottom + step, Math.ceil(most / step) * step);
        ToDoubleFunction<Double> y = value -> BOTTOM - (value - bottom) / (top - bottom) * (BOTTOM - TOP);
        Svg svg = new Svg(HEIGHT, says);
        axes(svg, bottom, top, step, y);
        svg.path("cone", true, outline(y));
        svg.path("axis", false, line(y, point -> point.compared().orElse(point.likely())));
        for (int i = 0; i < points.size(); i++) {
            double at = x(i);
            points.get(i).seen().ifPresent(seen -> svg.circle(at, y.applyAsDouble(seen), 1.6, "dot"));
        }
        svg.path("course", false, line(y, Point::likely));
        ends(svg, y);
        return svg;
    }

    private void axes(Svg svg, double bottom, double top, double step, ToDoubleFunction<Double> y) {
        svg.text(LEFT - 6, TOP - 8, Anchor.END, "small", unit);
        for (double value = bottom; value <= top + step / 2; value += step) {
            svg.line(LEFT, y.applyAsDouble(value), RIGHT, y.applyAsDouble(value), "grid");
            svg.text(
                    LEFT - 6,
                    y.applyAsDouble(value) + 4,
                    Anchor.END,
                    "small",
                    Show.plainText(BigDecimal.valueOf(value), 1));
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis");
        svg.text(LEFT, BOTTOM + 16, Anchor.START, "small", from);
        svg.text(RIGHT, BOTTOM + 16, Anchor.END, "small", to);
    }

    /** Beside the last day; the line first, then what it is compared with, never on top of each other. */
    private void ends(Svg svg, ToDoubleFunction<Double> y) {
        Point last = points.get(points.size() - 1);
        double here = y.applyAsDouble(last.likely()) + 4;
        svg.text(RIGHT + 6, here, Anchor.START, "value", end);
        last.compared().ifPresent(value -> {
            double there = y.applyAsDouble(value) + 4;
            double free = Math.abs(there - here) >= LETTERING ? there : here + (there < here ? -LETTERING : LETTERING);
            svg.text(RIGHT + 6, free, Anchor.START, "small", compared);
        });
    }

    private double[] outline(ToDoubleFunction<Double> y) {
        double[] there = line(y, Point::most);
        double[] back = line(y, Point::least);
        double[] both = java.util.Arrays.copyOf(there, there.length + back.length);
        for (int i = 0; i < back.length; i += 2) {
            both[there.length + i] = back[back.length - 2 - i];
            both[there.length + i + 1] = back[back.length - 1 - i];
        }
        return both;
    }

    private double[] line(ToDoubleFunction<Double> y, ToDoubleFunction<Point> figure) {
        double[] line = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            line[2 * i] = x(i);
            line[2 * i + 1] = y.applyAsDouble(figure.applyAsDouble(points.get(i)));
        }
        return line;
    }

    private double x(int day) {
        return points.size() == 1 ? LEFT : LEFT + (RIGHT - LEFT) * day / (points.size() - 1);
    }
}
