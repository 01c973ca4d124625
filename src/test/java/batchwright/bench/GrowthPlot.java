package batchwright.bench;

import batchwright.bench.Growth.Point;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Draws growth as SVG: one panel for each thing that grows, both axes logarithmic, the number beside each point. */
final class GrowthPlot {
    private static final int PANEL = 300;
    private static final int HEIGHT = 260;
    private static final int LEFT = 54;
    private static final int TOP = 34;
    private static final int RIGHT = 20;
    private static final int BOTTOM = 44;
    private static final double LEAST_MILLIS = 10;
    private static final double MOST_MILLIS = 100_000;
    private static final String BLUE = "#0072B2";

    private final StringBuilder svg = new StringBuilder();

    private GrowthPlot() {}

    static String of(Map<String, Map<Integer, Point>> growth) {
        var plot = new GrowthPlot();
        int width = 2 * PANEL;
        int height = (growth.size() + 1) / 2 * HEIGHT;
        plot.add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"11\">%n",
                width, height);
        plot.add("<rect width=\"%d\" height=\"%d\" fill=\"white\"/>%n", width, height);
        int k = 0;
        for (var panel : growth.entrySet()) {
            plot.add("<g transform=\"translate(%d %d)\">%n", k % 2 * PANEL, k / 2 * HEIGHT);
            plot.panel(panel.getKey(), panel.getValue());
            plot.add("</g>%n");
            k++;
        }
        return plot.add("</svg>%n").svg.toString();
    }

    private void panel(String what, Map<Integer, Point> points) {
        add("<text x=\"%d\" y=\"20\" font-weight=\"bold\">by number of %s</text>%n", LEFT, what);
        for (double millis = LEAST_MILLIS; millis <= MOST_MILLIS; millis *= 10) {
            add(
                    "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#ccc\"/>%n",
                    LEFT, PANEL - RIGHT, y(millis), y(millis));
            add(
                    "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s s</text>%n",
                    LEFT - 6, y(millis) + 4, millis < 1000 ? millis / 1000 : (Object) Math.round(millis / 1000));
        }
        int least = points.keySet().stream().min(Integer::compare).orElseThrow();
        int most = points.keySet().stream().max(Integer::compare).orElseThrow();
        ToDoubleFunction<Integer> x = count -> LEFT
                + 10
                + Math.log((double) count / least) / Math.log((double) most / least) * (PANEL - LEFT - RIGHT - 24);
        var line = new StringBuilder();
        points.forEach((count, point) -> line.append(
                String.format(Locale.ROOT, "%.1f,%.1f ", x.applyAsDouble(count), y((double) point.millis()))));
        add("<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"/>%n", line, BLUE);
        points.forEach((count, point) -> point(x.applyAsDouble(count), count, point));
    }

    private void point(double x, int count, Point point) {
        double y = y((double) point.millis());
        add(
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\" stroke=\"%s\" stroke-width=\"2\"/>%n",
                x, y, point.proven() ? BLUE : "white", BLUE);
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" stroke=\"white\" stroke-width=\"4\" paint-order=\"stroke\">%s</text>%n",
                x, y - 9, seconds(point));
        add("<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%d</text>%n", x, HEIGHT - BOTTOM + 18, count);
    }

    private static String seconds(Point point) {
        return String.format(
                Locale.ROOT, point.millis() < 10_000 ? "%.2f" : "%.0f", Math.max(0.01, point.millis() / 1e3));
    }

    private static double y(double millis) {
        double share = Math.log(Math.max(millis, LEAST_MILLIS) / LEAST_MILLIS) / Math.log(MOST_MILLIS / LEAST_MILLIS);
        return HEIGHT - BOTTOM - share * (HEIGHT - TOP - BOTTOM);
    }

    private GrowthPlot add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values));
        return this;
    }
}
