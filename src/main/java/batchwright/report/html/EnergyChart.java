package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.limit.DayTarget;
import batchwright.report.html.chart.Svg;
import batchwright.report.html.chart.Svg.Anchor;
import batchwright.report.html.part.Series;
import java.util.List;

/** A bar for each day, containers and snacks stacked, against the band that energy must lie in. Bars begin at zero. */
final class EnergyChart {
    private static final double LEFT = 46;
    private static final double RIGHT = Svg.WIDTH - 44.0;
    private static final double TOP = 40;
    private static final double ROW = 27;
    private static final double BAR = 20;
    private static final double BASELINE = 14.5;
    private static final double ROOM_FOR_A_LETTER = 12;

    private final List<EatenDay> days;
    private final DayTarget target;
    private final double unitsPerKcal;

    /** @param scale kcal at the right end */
    EnergyChart(List<EatenDay> days, DayTarget target, int scale) {
        this.days = days;
        this.target = target;
        this.unitsPerKcal = (RIGHT - LEFT) / scale;
    }

    /** The most that any eater of the page has or may have, so that all their pictures have one scale [kcal]. */
    static int scale(PlanPage page) {
        return page.plan().eaters().stream()
                .mapToInt(eater -> Math.max(
                        most(eater.seat().target()),
                        page.eaten(eater).stream()
                                .mapToInt(day -> day.total(Nutrient.ENERGY))
                                .max()
                                .orElse(0)))
                .max()
                .orElse(1);
    }

    /** Without a band, the aim. */
    private static int most(DayTarget target) {
        return target.day(Nutrient.ENERGY).most().orElse(target.energyAimKcal());
    }

    Svg draw(String says) {
        double bottom = TOP + ROW * days.size();
        Svg svg = new Svg(bottom + 4, says);
        double least = x(target.day(Nutrient.ENERGY).least());
        double most = x(most(target));
        svg.text(
                RIGHT,
                13,
                Anchor.END,
                "small",
                "target " + target.energyAimKcal() + ", band "
                        + target.day(Nutrient.ENERGY).says());
        svg.line((least + most) / 2, 17, (least + most) / 2, TOP - 6, "leader");
        svg.text(Svg.WIDTH, TOP - 8, Anchor.END, "small", "kcal");
        svg.text(LEFT, TOP - 8, Anchor.MIDDLE, "small", "0");
        svg.rectangle(least, TOP - 5, most - least, bottom - TOP + 7, "band");
        for (int i = 0; i < days.size(); i++) {
            day(svg, days.get(i), TOP + ROW * i);
        }
        svg.line(least, TOP - 5, least, bottom + 2, "bandedge");
        svg.line(most, TOP - 5, most, bottom + 2, "bandedge");
        svg.line(LEFT, TOP - 5, LEFT, bottom + 2, "axis");
        return svg;
    }

    private void day(Svg svg, EatenDay day, double top) {
        svg.text(LEFT - 6, top + BASELINE, Anchor.END, "rowname", "Day " + day.day());
        double from = 0;
        for (int i = 0; i < day.items().size(); i++) {
            EatenDay.Item item = day.items().get(i);
            double kcal = day.amount(Nutrient.ENERGY, i);
            for (int one = 0; one < item.count(); one++) {
                segment(svg, item.series(), from, kcal / item.count(), top);
                from += kcal / item.count();
            }
        }
        int total = day.total(Nutrient.ENERGY);
        svg.text(Svg.WIDTH, top + BASELINE, Anchor.END, "value", Integer.toString(total));
    }

    private void segment(Svg svg, Series series, double from, double kcal, double top) {
        double width = kcal * unitsPerKcal;
        svg.rectangle(x(from), top, width, BAR, "part " + series.look());
        if (width >= ROOM_FOR_A_LETTER) {
            svg.text(x(from) + width / 2, top + BASELINE, Anchor.MIDDLE, "on", series.letter());
        }
    }

    private double x(double kcal) {
        return LEFT + kcal * unitsPerKcal;
    }
}
