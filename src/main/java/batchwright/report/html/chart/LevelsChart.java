package batchwright.report.html.chart;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.html.chart.Svg.Anchor;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What each of some levels costs: a dot where it is proven, a bar where it lies between two sums. Dots are not joined: in between a plan may
 * cost anything from one to the next.
 *
 * @param unit of the levels
 */
public record LevelsChart(String unit, Currency currency, List<Level> levels) {
    private static final double LEFT = 52;
    private static final double RIGHT = Svg.WIDTH - 16.0;
    private static final double TOP = 26;
    private static final double BOTTOM = 170;
    private static final double HEIGHT = 212;
    private static final int MOST_NAMES = 7;
    private static final int LINES = 4;

    /**
     * @param least no plan costs less [minor units]
     * @param most a plan of this cost is known; empty when none is
     * @param inForce whether it is the plan that was asked for
     */
    public record Level(String name, double least, OptionalDouble most, boolean inForce) {}

    public Svg draw(String says) {
        double lowest = levels.stream()
                .filter(level -> level.most().isPresent())
                .mapToDouble(Level::least)
                .min()
                .orElse(0);
        double highest = levels.stream()
                .flatMapToDouble(level -> level.most().stream())
                .max()
                .orElse(1);
        double room = Math.max(1, (highest - lowest) / (LINES * 2.0));
        double bottom = Math.max(0, lowest - room);
        double top = highest + room;
        Svg svg = new Svg(HEIGHT, says);
        svg.text(LEFT - 6, TOP - 12, Anchor.END, "small", currency.toString());
        for (int i = 0; i <= LINES; i++) {
            double y = BOTTOM - (BOTTOM - TOP) * i / LINES;
            svg.line(LEFT, y, RIGHT, y, i == 0 ? "axis" : "grid");
            svg.text(
                    LEFT - 6,
                    y + 4,
                    Anchor.END,
                    "small",
                    currency.text(new Money(Math.round(bottom + (top - bottom) * i / LINES))));
        }
        for (int i = 0; i < levels.size(); i++) {
            level(svg, i, bottom, top);
        }
        svg.text((LEFT + RIGHT) / 2, HEIGHT - 6, Anchor.MIDDLE, "small", unit);
        return svg;
    }

    private void level(Svg svg, int i, double bottom, double top) {
        Level level = levels.get(i);
        double x = LEFT + (RIGHT - LEFT) * (i + 0.5) / levels.size();
        int each = (levels.size() + MOST_NAMES - 1) / MOST_NAMES;
        if (i % each == 0 || level.inForce()) {
            svg.text(x, BOTTOM + 16, Anchor.MIDDLE, level.inForce() ? "value" : "small", level.name());
        }
        level.most().ifPresent(most -> {
            double above = y(most, bottom, top);
            double below = y(Math.max(bottom, level.least()), bottom, top);
            if (below - above > 1) {
                svg.line(x, above, x, below, "bandedge");
            }
            if (level.inForce()) {
                svg.circle(x, above, 6, "below");
                svg.text(x, above - 11, Anchor.MIDDLE, "value", "now");
            }
            svg.circle(x, above, 3.5, "dot");
        });
    }

    private static double y(double cost, double bottom, double top) {
        return BOTTOM - (cost - bottom) / (top - bottom) * (BOTTOM - TOP);
    }
}
