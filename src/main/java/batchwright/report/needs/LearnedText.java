package batchwright.report.needs;

import batchwright.needs.caution.Caution;
import batchwright.needs.learning.Learned;
import batchwright.needs.learning.TargetAdvice;
import batchwright.needs.weighing.Expenditure;
import batchwright.needs.weighing.KcalBand;
import batchwright.needs.weighing.TrendDay;
import batchwright.needs.weighing.UnusedWeighing;
import batchwright.report.print.CourseChart;
import batchwright.report.print.CourseChart.Point;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;
import java.util.OptionalDouble;

/** What weighings say: the answer, weight and energy drawn, the table of both, what was left out. */
public final class LearnedText {
    private static final CourseChart WEIGHT =
            new CourseChart("kg", List.of(0.1, 0.2, 0.5, 1.0, 2.0, 5.0), "trend", "weighed", "goal");
    private static final CourseChart HOLDS =
            new CourseChart("kcal", List.of(25.0, 50.0, 100.0, 200.0, 500.0), "holds your weight", "", "equation");
    /** Of the table; the last ones. */
    private static final int MOST_WEEKS = 16;

    private static final int MOST_LEFT_OUT = 10;

    private final Learned learned;
    private final Page page;

    private LearnedText(Learned learned, Page page) {
        this.learned = learned;
        this.page = page;
    }

    /** Adds a section. */
    public static void print(Learned learned, Page page) {
        new LearnedText(learned, page).print();
    }

    private void print() {
        page.heading("What your weighings say");
        if (learned.advice() instanceof TargetAdvice.Stop stop) {
            stop.why().forEach(this::caution);
        }
        if (learned.hidesFigures()) {
            return;
        }
        Expenditure seen = learned.seen();
        paragraph(LearnedWords.evidence(seen));
        LearnedWords.figures(seen).forEach(this::paragraph);
        LearnedWords.advice(learned.advice()).forEach(this::paragraph);
        learned.told().forEach(this::caution);
        page.gap();
        paragraph(LearnedWords.weight(seen));
        chart(WEIGHT, this::weight);
        if (seen.evidence().isEnough()) {
            page.gap();
            paragraph(LearnedWords.sideBySide(seen));
            LearnedBars.sideBySide(seen, page);
            page.gap();
            paragraph(LearnedWords.holding(seen));
            chart(HOLDS, this::holds);
        }
        if (seen.evidence().loggedDays() > 0) {
            page.gap();
            paragraph(LearnedWords.eaten(seen) + " # is what was weighed out here, + other food, | the target.");
            LearnedBars.eaten(learned, page);
        }
        page.gap();
        table();
        leftOut(seen.leftOut());
        page.item(
                "A figure from weighings is in the kcal of your own record: what you forget to write down is missing in it"
                        + " too. Water can hide two weeks of change. It is no medical advice; ask a doctor or dietitian if you are"
                        + " ill, take medicine, or if eating or weighing worries you. [Hall and Chow 2011]");
    }

    private void chart(CourseChart chart, java.util.function.Function<TrendDay, Point> point) {
        List<TrendDay> trend = learned.seen().trend();
        chart.lines(
                        trend.stream().map(point).toList(),
                        Dates.shortly(trend.get(0).date(), learned.seen().lastDate()),
                        Dates.shortly(learned.seen().lastDate()))
                .forEach(page::line);
    }

    private Point weight(TrendDay day) {
        return new Point(
                day.leastKg(),
                day.trendKg(),
                day.mostKg(),
                learned.seen().usedKg(day),
                OptionalDouble.of(TargetCourse.of(learned).kg(day)));
    }

    private Point holds(TrendDay day) {
        KcalBand band = day.holds();
        return new Point(
                band.least(),
                band.likely(),
                band.most(),
                OptionalDouble.empty(),
                OptionalDouble.of(learned.seen().prior().kcal()));
    }

    private void table() {
        var table = new TextTable("  ")
                .left("week to")
                .right("weighed\nkg")
                .right("trend\nkg")
                .right("+-\nkg")
                .right("planned\nkcal")
                .right("other\nkcal")
                .right("logged\ndays")
                .right("holds\nkcal")
                .right("+-\nkcal");
        List<TrendWeek> weeks = TrendWeek.of(learned.seen());
        weeks.subList(Math.max(0, weeks.size() - MOST_WEEKS), weeks.size()).forEach(week -> row(table, week));
        page.table(table);
        paragraph("+- is the band that holds the truth in 8 of 10 cases.");
    }

    private void row(TextTable table, TrendWeek week) {
        TrendDay last = week.last();
        boolean shown = learned.seen().evidence().isEnough();
        table.row(
                Dates.shortly(last.date(), learned.seen().lastDate()),
                oneDecimal(week.weighedKg()),
                Show.oneDecimal(last.trendKg()),
                Show.oneDecimal((last.mostKg() - last.leastKg()) / 2),
                whole(week.plannedKcal()),
                whole(week.unplannedKcal()),
                Integer.toString(week.loggedDays()),
                shown ? Long.toString(KcalBand.rounded(last.holds().likely())) : "",
                shown
                        ? Long.toString(KcalBand.rounded(
                                last.holds().most() - last.holds().likely()))
                        : "");
    }

    private void leftOut(List<UnusedWeighing> leftOut) {
        leftOut.stream()
                .skip(Math.max(0, leftOut.size() - MOST_LEFT_OUT))
                .forEach(left -> page.item("Left out: " + Show.oneDecimal(left.weightKg()) + " kg on "
                        + Dates.shortly(left.date(), learned.seen().lastDate()) + ", "
                        + left.why().says() + "."));
    }

    private void paragraph(String text) {
        page.paragraph("  ", "  ", text);
    }

    private void caution(Caution caution) {
        page.item(caution.text() + " [" + caution.source() + "]");
    }

    private static String oneDecimal(OptionalDouble value) {
        return value.isPresent() ? Show.oneDecimal(value.getAsDouble()) : "-";
    }

    private static String whole(OptionalDouble value) {
        return value.isPresent() ? Show.whole(value.getAsDouble()) : "-";
    }
}
