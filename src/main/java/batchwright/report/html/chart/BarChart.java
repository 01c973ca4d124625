package batchwright.report.html.chart;

import batchwright.report.html.chart.Svg.Anchor;
import batchwright.report.labels.Shortened;
import java.util.List;

/** Horizontal bars from zero, the name above each and its figure at its end. */
public final class BarChart {
    private static final double RIGHT = Svg.WIDTH - 60.0;
    private static final double ROW = 36;
    private static final double BAR = 14;
    private static final int MOST_LETTERS = 48;

    /**
     * @param value at least 0
     * @param look a class of the style sheet
     */
    public record Bar(String name, double value, String says, String look) {}

    private BarChart() {}

    public static Svg draw(List<Bar> bars, String says) {
        double most = bars.stream().mapToDouble(Bar::value).max().orElse(1);
        Svg svg = new Svg(ROW * bars.size() + 2, says);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double top = ROW * i;
            double width = most == 0 ? 0 : bar.value / most * RIGHT;
            svg.text(0, top + 12, Anchor.START, "rowname", Shortened.to(MOST_LETTERS, bar.name));
            svg.rectangle(0.5, top + 17, width, BAR, "part " + bar.look);
            svg.text(width + 6, top + 28.5, Anchor.START, "value", bar.says);
        }
        return svg;
    }
}
