package batchwright.report.html.chart;

import batchwright.report.html.chart.Svg.Anchor;
import java.util.List;

/** Bands of one figure below each other, on one scale: where each lies, what is likeliest in it, and how wide it is. */
public final class BandsChart {
    private static final double LEFT = 20;
    private static final double RIGHT = Svg.WIDTH - 20.0;
    private static final double ROW = 46;
    private static final double BAR = 16;
    private static final int MOST_TICKS = 6;

    /**
     * @param name stands above it
     * @param says stands at its end
     */
    public record Band(String name, double least, double likely, double most, String says) {}

    private BandsChart() {}

    /**
     * @param bands at least one
     * @param steps of the scale, the smallest first
     */
    public static Svg draw(List<Band> bands, List<Double> steps, String unit, String says) {
        double least = bands.stream().mapToDouble(Band::least).min().orElseThrow();
        double most = bands.stream().mapToDouble(Band::most).max().orElseThrow();
        double step = steps.stream()
                .filter(each -> Math.ceil(most / each) - Math.floor(least / each) < MOST_TICKS)
                .findFirst()
                .orElse(most - least);
        double from = Math.floor(least / step) * step;
        double to = Math.max(from + step, Math.ceil(most / step) * step);
        double perUnit = (RIGHT - LEFT) / (to - from);
        double bottom = ROW * bands.size() + 4;
        Svg svg = new Svg(bottom + 22, says);
        for (double value = from; value <= to + step / 2; value += step) {
            double x = LEFT + (value - from) * perUnit;
            for (int row = 0; row < bands.size(); row++) {
                svg.line(x, ROW * row + 18, x, ROW * row + 38, "grid");
            }
            boolean first = value == from;
            svg.text(
                    first ? 0 : x,
                    bottom + 15,
                    first ? Anchor.START : Anchor.MIDDLE,
                    "small",
                    Math.round(value) + (first ? " " + unit : ""));
        }
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            double top = ROW * i;
            double x = LEFT + (band.least - from) * perUnit;
            double likely = LEFT + (band.likely - from) * perUnit;
            svg.rectangle(x, top + 20, (band.most - band.least) * perUnit, BAR, "cone");
            svg.line(likely, top + 17, likely, top + 39, "bandedge");
            svg.text(0, top + 13, Anchor.START, "rowname", band.name);
            svg.text(Svg.WIDTH, top + 13, Anchor.END, "value", band.says);
        }
        return svg;
    }
}
