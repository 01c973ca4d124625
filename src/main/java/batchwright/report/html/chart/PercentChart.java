package batchwright.report.html.chart;

import batchwright.report.html.chart.Svg.Anchor;
import java.util.List;
import java.util.Optional;

/**
 * Dots on a scale of per cent of what is aimed at, a row for each nutrient. Up to 300 % the scale is even, beyond it each tenfold
 * takes a quarter of the width, so that one large figure does not squeeze the others.
 */
public final class PercentChart {
    /** What the marks mean. */
    public static final String KEY =
            "Shaded: where the amount should lie, from a floor on, or up to a limit. ● inside, ▽ below, ▲ above; ┃ an upper limit.";

    private static final double LEFT = 112;
    private static final double RIGHT = Svg.WIDTH - 84.0;
    private static final double TOP = 24;
    private static final double ROW = 23;
    private static final double EVEN_TO = 300;
    private static final double EVEN_SHARE = 0.75;
    private static final double MOST = 3000;
    private static final double STEP = 100;

    /** How a dot looks, and what it says. */
    public enum Dot {
        FINE,
        BELOW,
        ABOVE
    }

    /** From here to there is as it should be [%]; without an upper end when there is none. */
    public record Zone(double from, Optional<Double> to) {}

    /**
     * @param percents one dot each
     * @param limit an upper limit, if there is one [%]
     * @param says the figure beside the row
     */
    public record Row(
            String label, List<Double> percents, Dot dot, Optional<Zone> zone, Optional<Double> limit, String says) {}

    private final List<Row> rows;
    private final double most;

    public PercentChart(List<Row> rows) {
        this.rows = rows;
        double largest = rows.stream()
                .flatMap(r -> r.percents.stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(STEP);
        this.most = largest > EVEN_TO ? MOST : Math.max(2 * STEP, Math.ceil(largest / STEP) * STEP);
    }

    public Svg draw(String says) {
        double bottom = TOP + ROW * rows.size();
        Svg svg = new Svg(bottom + 4, says);
        List<Double> ticks = most > EVEN_TO ? List.of(0.0, 100.0, 300.0, 3000.0) : List.of(0.0, 100.0, most);
        for (double tick : ticks) {
            if (tick != STEP) {
                svg.line(x(tick), TOP - 4, x(tick), bottom, "grid");
            }
            svg.text(x(tick), TOP - 10, Anchor.MIDDLE, "small", Math.round(tick) + (tick == STEP ? " %" : ""));
        }
        for (int i = 0; i < rows.size(); i++) {
            zone(svg, rows.get(i), TOP + ROW * i);
        }
        svg.line(x(STEP), TOP - 4, x(STEP), bottom, "axis");
        for (int i = 0; i < rows.size(); i++) {
            row(svg, rows.get(i), TOP + ROW * i);
        }
        return svg;
    }

    private void zone(Svg svg, Row row, double top) {
        row.zone.ifPresent(zone -> {
            double to = Math.min(RIGHT, zone.to.map(this::x).orElse(RIGHT));
            svg.rectangle(x(zone.from), top + 3, to - x(zone.from), ROW - 6, "band");
        });
    }

    private void row(Svg svg, Row row, double top) {
        double middle = top + ROW / 2;
        svg.text(LEFT - 8, middle + 4, Anchor.END, "rowname", row.label);
        svg.line(x(0), middle, RIGHT, middle, "grid");
        row.limit
                .filter(limit -> limit <= most)
                .ifPresent(limit -> svg.rectangle(x(limit) - 1.5, middle - 8, 3, 16, "limit"));
        row.percents.forEach(percent -> dot(svg, row.dot, x(percent), middle));
        svg.text(Svg.WIDTH, middle + 4, Anchor.END, "value", row.says);
    }

    /** Shape says the same as colour. */
    private static void dot(Svg svg, Dot dot, double x, double y) {
        switch (dot) {
            case FINE -> svg.circle(x, y, 4.5, "dot");
            case BELOW -> svg.path("below", true, x - 6, y - 5, x + 6, y - 5, x, y + 6);
            case ABOVE -> svg.path("above", true, x - 6, y + 5, x + 6, y + 5, x, y - 6);
        }
    }

    private double x(double percent) {
        double width = RIGHT - LEFT;
        if (most <= EVEN_TO) {
            return LEFT + percent / most * width;
        }
        double even = Math.min(percent, EVEN_TO) / EVEN_TO * EVEN_SHARE;
        double beyond = percent <= EVEN_TO ? 0 : Math.min(1, Math.log10(percent / EVEN_TO)) * (1 - EVEN_SHARE);
        return LEFT + (even + beyond) * width;
    }
}
