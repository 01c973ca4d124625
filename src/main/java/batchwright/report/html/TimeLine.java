package batchwright.report.html;

import batchwright.plan.Session;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.print.Show;
import batchwright.schedule.OvenSetting;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The order of work of a session: drawn, and beside it as a table, which on paper a cook reads too. */
final class TimeLine {
    private final Session session;
    private final Schedule schedule;

    TimeLine(Session session, Schedule schedule) {
        this.session = session;
        this.schedule = schedule;
    }

    void write(Html html) {
        String says = Show.capital(ScheduleWords.says(schedule)) + ".";
        html.open("section").element("h3", "Order of work").line();
        html.open("div", "class", "work").line();
        Figure.open(html, "timeline", "At a glance", says);
        new TimeLineChart(schedule, this::tag, this::look).draw(html, says);
        html.open("ul", "class", "key").line();
        session.batches().forEach(batch -> {
            Series series = Series.of(session, batch.dish());
            html.open("li").element("b", series.letter(), "class", "swatch " + series.look());
            html.open("span").name(batch.dish().name()).close().close().line();
        });
        html.close().close().line();
        html.open("div");
        table().write(html);
        html.element("p", ScheduleWords.note(schedule), "class", "note").close();
        html.close().close().line();
    }

    private record Line(int minute, List<String> cells) {}

    private Table table() {
        List<Line> lines = new ArrayList<>();
        schedule.settings().forEach(setting -> lines.add(line(setting)));
        schedule.steps().forEach(step -> lines.add(line(step)));
        var table = new Table("By the clock, from 0:00")
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

    private static Line line(OvenSetting setting) {
        return new Line(
                setting.minute(),
                List.of(
                        ScheduleWords.clock(setting.minute()),
                        "",
                        "Turn the oven to " + setting.celsius() + " °C",
                        "–",
                        "–",
                        "oven"));
    }

    private Line line(PlacedStep step) {
        return new Line(
                step.start(),
                List.of(
                        ScheduleWords.clock(step.start()),
                        tag(step),
                        FirstWords.of(step.text(), 60),
                        step.handsOnMinutes() == 0 ? "–" : ScheduleWords.clock(step.handsOnUntil()),
                        ScheduleWords.clock(step.end()),
                        ScheduleWords.place(step)));
    }

    /** A3: the letter of the dish and the number of the step below it; the letter alone fills containers. */
    private String tag(PlacedStep step) {
        String number =
                step.number().isPresent() ? Integer.toString(step.number().getAsInt()) : "";
        return Series.of(session, step.dish()).letter() + number;
    }

    private String look(PlacedStep step) {
        return Series.of(session, step.dish()).look();
    }
}
