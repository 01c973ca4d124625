package batchwright.report.html;

import batchwright.needs.learning.Learned;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.needs.weighing.TrendDay;
import batchwright.report.html.chart.BandsChart;
import batchwright.report.html.chart.IntakeChart;
import batchwright.report.html.chart.TrendChart;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.needs.LearnedWords;
import batchwright.report.needs.TargetCourse;
import batchwright.report.needs.TrendWeek;
import batchwright.report.print.CourseChart.Point;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Weight with its trend and goal, the equation beside the weighings, what holds the weight over time, and what was eaten; none for whom
 * no figures are shown.
 */
public final class LearnedFigures {
    private static final List<Double> KG = List.of(0.5, 1.0, 2.0, 5.0, 10.0);
    private static final List<Double> KCAL = List.of(50.0, 100.0, 200.0, 500.0, 1000.0);
    private static final String NONE = "-";
    private static final String LOOK = "weight";
    /** Days that can be told apart in a picture. */
    private static final int MOST_COLUMNS = 60;

    private static final IntakeChart.Column NOT_KNOWN = new IntakeChart.Column(0, 0);

    private LearnedFigures() {}

    public static List<Figure> of(Learned learned) {
        List<Figure> figures = new ArrayList<>();
        if (!learned.hidesFigures()) {
            figures.add(weight(learned));
            if (learned.seen().evidence().isEnough()) {
                figures.add(sideBySide(learned.seen()));
                figures.add(holding(learned.seen()));
            }
            if (learned.seen().evidence().loggedDays() > 0) {
                figures.add(eaten(learned));
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
                        date(seen, week.last().date()),
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
                        date(seen, week.last().date()),
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

    /** What was thought before, and what is known now. */
    private static Figure sideBySide(Expenditure seen) {
        String says = LearnedWords.sideBySide(seen);
        var table = new Table("What holds the weight, two ways")
                .words("by")
                .numbers("kcal a day")
                .numbers("8 of 10");
        List<BandsChart.Band> bands = new ArrayList<>();
        LearnedWords.bands(seen).forEach((name, band) -> {
            String from = KcalBand.rounded(band.least()) + " to " + KcalBand.rounded(band.most());
            String likely = Long.toString(KcalBand.rounded(band.likely()));
            bands.add(new BandsChart.Band(name, band.least(), band.likely(), band.most(), likely));
            table.row(name, likely, from);
        });
        return new Figure(
                LOOK,
                "The equation and your weighings",
                says,
                Optional.of(BandsChart.draw(bands, KCAL, "kcal", says)),
                Optional.of(table));
    }

    private static Figure eaten(Learned learned) {
        Expenditure seen = learned.seen();
        List<IntakeChart.Column> days = seen.trend().stream()
                .map(TrendDay::intake)
                .map(day -> day.complete() ? new IntakeChart.Column(day.plannedKcal(), day.unplannedKcal()) : NOT_KNOWN)
                .toList();
        List<IntakeChart.Column> weeks = TrendWeek.of(seen).stream()
                .map(week -> new IntakeChart.Column(
                        week.plannedKcal().orElse(0), week.unplannedKcal().orElse(0)))
                .toList();
        boolean byDay = days.size() <= MOST_COLUMNS;
        String says = LearnedWords.eaten(seen) + " Blue is what was weighed out here, orange is other food; "
                + (byDay ? "a column is a day." : "a column is a week.");
        OptionalDouble target = learned.needs()
                .target()
                .map(day -> OptionalDouble.of(day.energyAimKcal()))
                .orElse(OptionalDouble.empty());
        var table = new Table("Food by week, kcal a day")
                .words("week to")
                .numbers("weighed out")
                .numbers("other")
                .numbers("logged days");
        TrendWeek.of(seen)
                .forEach(week -> table.row(
                        date(seen, week.last().date()),
                        kcal(week.plannedKcal()),
                        kcal(week.unplannedKcal()),
                        Integer.toString(week.loggedDays())));
        var chart = new IntakeChart(
                byDay ? days : weeks, target, date(seen, seen.trend().get(0).date()), date(seen, seen.lastDate()));
        return new Figure(LOOK, "What you ate", says, Optional.of(chart.draw(says)), Optional.of(table));
    }

    /** With its year where it is not that of the last day. */
    private static String date(Expenditure seen, LocalDate day) {
        return Dates.shortly(day, seen.lastDate());
    }

    private static TrendChart chart(
            String unit, List<Double> steps, List<Point> points, Expenditure seen, String end, String compared) {
        return new TrendChart(
                unit,
                steps,
                points,
                date(seen, seen.trend().get(0).date()),
                date(seen, seen.lastDate()),
                end,
                compared);
    }

    private static Figure figure(String heading, String says, TrendChart chart, Table table) {
        return new Figure(LOOK, heading, says, Optional.of(chart.draw(says)), Optional.of(table));
    }

    private static String kg(double value) {
        return Show.oneDecimal(value);
    }

    private static String kcal(OptionalDouble value) {
        return value.isPresent() ? Show.whole(value.getAsDouble()) : NONE;
    }
}
