package batchwright.report.html;

import batchwright.plan.Batch;
import batchwright.plan.Session;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.html.chart.FirstWords;
import batchwright.report.html.chart.Svg;
import batchwright.report.html.chart.TimeLineChart;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.KeyEntry;
import batchwright.report.html.part.Series;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import batchwright.schedule.OvenSetting;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The order of work of a session: drawn, and beside it as a table, which on paper a cook reads too. */
public record TimeLine(Figure figure, List<KeyEntry> key, Table table, List<String> standing, String note) {
    static TimeLine of(PlanPage page) {
        Session session = page.plan();
        Schedule schedule = page.schedule();
        KitchenClock clock = page.style().clock();
        String says = Show.capital(ScheduleWords.says(schedule)) + ".";
        Svg picture = new TimeLineChart(
                        schedule,
                        clock,
                        step -> tag(session, step),
                        step -> series(session, step).look())
                .draw(says);
        return new TimeLine(
                new Figure("timeline", "At a glance", says, Optional.of(picture), Optional.empty()),
                session.batches().stream()
                        .map(Batch::dish)
                        .map(dish -> new KeyEntry(Series.of(session, dish), dish.name(), ""))
                        .toList(),
                table(session, schedule, clock),
                ScheduleWords.standing(schedule),
                ScheduleWords.note(schedule));
    }

    private record Line(int minute, List<String> cells) {}

    private static Table table(Session session, Schedule schedule, KitchenClock clock) {
        List<Line> lines = new ArrayList<>();
        schedule.settings().forEach(setting -> lines.add(line(setting, clock)));
        schedule.steps().forEach(step -> lines.add(line(session, step, clock)));
        var table = new Table("By the clock, from " + clock.text(0))
                .words("at")
                .words("step")
                .words("what to do")
                .numbers("hands")
                .numbers("done")
                .words("on");
        lines.stream()
                .sorted(Comparator.comparingInt(Line::minute))
                .forEach(line -> table.row(line.cells.toArray(String[]::new)));
        return table;
    }

    private static Line line(OvenSetting setting, KitchenClock clock) {
        return new Line(
                setting.minute(),
                List.of(
                        clock.text(setting.minute()),
                        "",
                        "Turn the oven to " + setting.celsius() + " °C",
                        "–",
                        "–",
                        "oven"));
    }

    private static Line line(Session session, PlacedStep step, KitchenClock clock) {
        return new Line(
                step.start(),
                List.of(
                        clock.text(step.start()),
                        tag(session, step),
                        FirstWords.of(step.text(), 60),
                        step.handsOnMinutes() == 0 ? "–" : clock.text(step.handsOnUntil()),
                        clock.text(step.end()),
                        ScheduleWords.place(step)));
    }

    /** A3: the letter of the dish and the number of the step below it; the letter alone fills containers. */
    private static String tag(Session session, PlacedStep step) {
        String number =
                step.number().isPresent() ? Integer.toString(step.number().getAsInt()) : "";
        return series(session, step).letter() + number;
    }

    private static Series series(Session session, PlacedStep step) {
        return Series.of(session, step.dish());
    }
}
