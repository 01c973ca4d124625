package batchwright.report.html;

import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.report.html.chart.TrendChart;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.needs.LearnedWords;
import batchwright.report.needs.TargetCourse;
import batchwright.report.needs.TrendWeek;
import batchwright.report.print.CourseChart.Point;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Weight with its trend, and what holds it over time with the equation beside it; none for whom no figures are shown. */
public final class LearnedFigures {
    private static final List<Double> KG = List.of(0.5, 1.0, 2.0, 5.0, 10.0);
    private static final List<Double> KCAL = List.of(50.0, 100.0, 200.0, 500.0, 1000.0);
    private static final String NONE = "-";

    private LearnedFigures() {}

    public static List<Figure> of(Learned learned) {
        List<Figure> figures = new ArrayList<>();
        if (!learned.hidesFigures()) {
            figures.add(weight(learned));
            if (learned.seen().evidence().isEnough()) {
                figures.add(holding(learned.seen()));
            }
        }
        return List.copyOf(figures);
    }

    private static Figure weight(Learned learned) {
        Expenditure seen = learned.seen();
        TargetCourse target = TargetCourse.of(learned);
        String says = LearnedWords.weight(seen);
        List<Point> points = seen.trend().stream()
                .map(day -> new Point(
                        day.leastKg(),
                        day.trendKg(),
                        day.mostKg(),
                        seen.usedKg(day),
                        OptionalDouble.of(target.kg(day))))
                .toList();
        var table = new Table("Weight and food by week")
                .words("week to")
                .numbers("weighed kg")
                .numbers("trend kg")
                .numbers("8 of 10")
                .numbers("goal kg")
                .numbers("planned kcal")
                .numbers("other kcal")
                .numbers("logged days");
        TrendWeek.of(seen)
                .forEach(week -> table.row(
                        Dates.shortly(week.last().date()),
                        week.weighedKg().isPresent() ? kg(week.weighedKg().getAsDouble()) : NONE,
                        kg(week.last().trendKg()),
                        kg(week.last().leastKg()) + " to " + kg(week.last().mostKg()),
                        kg(target.kg(week.last())),
                        kcal(week.plannedKcal()),
                        kcal(week.unplannedKcal()),
                        Integer.toString(week.loggedDays())));
        return figure("What the scale says", says, chart("kg", KG, points, seen, kg(seen.weightKg()), "goal"), table);
    }

    private static Figure holding(Expenditure seen) {
        String says = LearnedWords.holding(seen);
        List<Point> points = seen.trend().stream()
                .map(day -> new Point(
                        day.holds().least(),
                        day.holds().likely(),
                        day.holds().most(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(seen.prior().kcal())))
                .toList();
        var table = new Table("What holds the weight, by week")
                .words("week to")
                .numbers("kcal a day")
                .numbers("8 of 10");
        TrendWeek.of(seen)
                .forEach(week -> table.row(
                        Dates.shortly(week.last().date()),
                        Long.toString(KcalBand.rounded(week.last().holds().likely())),
                        KcalBand.rounded(week.last().holds().least()) + " to "
                                + KcalBand.rounded(week.last().holds().most())));
        return figure(
                "What holds your weight",
                says,
                chart(
                        "kcal",
                        KCAL,
                        points,
                        seen,
                        Long.toString(KcalBand.rounded(seen.holds().likely())),
                        "equation"),
                table);
    }

    private static TrendChart chart(
            String unit, List<Double> steps, List<Point> points, Expenditure seen, String end, String compared) {
        return new TrendChart(
                unit,
                steps,
                points,
                Dates.shortly(seen.trend().get(0).date()),
                Dates.shortly(seen.lastDate()),
                end,
                compared);
    }

    private static Figure figure(String heading, String says, TrendChart chart, Table table) {
        return new Figure("weight", heading, says, Optional.of(chart.draw(says)), Optional.of(table));
    }

    private static String kg(double value) {
        return Show.oneDecimal(value);
    }

    private static String kcal(OptionalDouble value) {
        return value.isPresent() ? Show.whole(value.getAsDouble()) : NONE;
    }
}
