package batchwright.report.html.chart;

import batchwright.needs.projection.ProjectedWeek;
import batchwright.report.html.chart.Svg.Anchor;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Weight over the weeks: a line, around it the band of what may well be, and at the ends what they mean. */
public final class WeightChart {
    private static final double LEFT = 36;
    private static final double RIGHT = Svg.WIDTH - 116.0;
    private static final double TOP = 20;
    private static final double BOTTOM = 180;
    private static final double HEIGHT = 214;
    private static final double LETTERING = 14;
    private static final List<Double> KG_STEPS = List.of(0.5, 1.0, 2.0, 5.0, 10.0, 20.0);
    private static final int MOST_TICKS = 6;

    private final List<ProjectedWeek> path;
    private final double step;
    private final double lowest;
    private final double highest;

    /** @param path at least two weeks, now being the first */
    public WeightChart(List<ProjectedWeek> path) {
        this.path = path;
        double least = path.stream().mapToDouble(WeightChart::least).min().orElseThrow();
        double most = path.stream().mapToDouble(WeightChart::most).max().orElseThrow();
        this.step = KG_STEPS.stream()
                .filter(kg -> Math.ceil(most / kg) - Math.floor(least / kg) < MOST_TICKS)
                .findFirst()
                .orElse((most - least) / 2);
        this.lowest = Math.floor(least / step) * step;
        this.highest = Math.max(lowest + step, Math.ceil(most / step) * step);
    }

    private static double least(ProjectedWeek week) {
        return week.lightest().orElse(week.likely()).weightKg();
    }

    private static double likely(ProjectedWeek week) {
        return week.likely().weightKg();
    }

    private static double most(ProjectedWeek week) {
        return week.heaviest().weightKg();
    }

    public Svg draw(String says) {
        Svg svg = new Svg(HEIGHT, says);
        axes(svg);
        svg.path("cone", true, outline());
        svg.path("course", false, line(WeightChart::likely, path));
        svg.circle(x(0), y(likely(path.get(0))), 4, "dot");
        ends(svg);
        return svg;
    }

    private void axes(Svg svg) {
        svg.text(LEFT - 6, TOP - 8, Anchor.END, "small", "kg");
        for (double kg = lowest; kg <= highest + step / 2; kg += step) {
            svg.line(LEFT, y(kg), RIGHT, y(kg), "grid");
            svg.text(LEFT - 6, y(kg) + 4, Anchor.END, "small", Show.plainText(BigDecimal.valueOf(kg), 1));
        }
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, "axis");
        int last = path.get(path.size() - 1).week();
        int each = Math.max(1, (last + 3) / 4);
        for (int week = 0; week <= last; week += each) {
            svg.line(x(week), BOTTOM, x(week), BOTTOM + 4, "axis");
            svg.text(x(week), BOTTOM + 16, Anchor.MIDDLE, "small", week == 0 ? "now" : Integer.toString(week));
        }
        svg.text((LEFT + RIGHT) / 2, HEIGHT - 4, Anchor.MIDDLE, "small", "weeks");
    }

    /** There along the heaviest, back along the lightest. */
    private double[] outline() {
        List<ProjectedWeek> back = new ArrayList<>(path);
        java.util.Collections.reverse(back);
        double[] there = line(WeightChart::most, path);
        double[] home = line(WeightChart::least, back);
        double[] both = java.util.Arrays.copyOf(there, there.length + home.length);
        System.arraycopy(home, 0, both, there.length, home.length);
        return both;
    }

    private double[] line(ToDoubleFunction<ProjectedWeek> kg, List<ProjectedWeek> weeks) {
        return weeks.stream()
                .flatMap(w -> java.util.stream.Stream.of(x(w.week()), y(kg.applyAsDouble(w))))
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private record End(double kg, String means) {}

    /** What each end means, beside it, and never two on top of each other. */
    private void ends(Svg svg) {
        ProjectedWeek last = path.get(path.size() - 1);
        List<End> ends = new ArrayList<>();
        ends.add(new End(likely(last), "as estimated"));
        ends.add(new End(most(last), "if you need less"));
        Optional.of(last)
                .filter(w -> w.lightest().isPresent())
                .ifPresent(w -> ends.add(new End(least(w), "if you need more")));
        ends.sort(Comparator.comparingDouble(End::kg).reversed());
        double free = 0;
        for (End end : ends) {
            double at = Math.max(y(end.kg) + 4, free);
            svg.text(RIGHT + 6, at, Anchor.START, "value", Show.oneDecimal(end.kg));
            svg.text(RIGHT + 6, at + 11, Anchor.START, "small", end.means);
            free = at + 2 * LETTERING;
        }
    }

    private double x(int week) {
        return LEFT + (double) week / path.get(path.size() - 1).week() * (RIGHT - LEFT);
    }

    private double y(double kg) {
        return BOTTOM - (kg - lowest) / (highest - lowest) * (BOTTOM - TOP);
    }
}
