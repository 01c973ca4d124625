package batchwright.report.html;

import batchwright.plan.Plan;
import batchwright.report.cooking.KitchenClock;
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
    private final Plan plan;
    private final Schedule schedule;
    private final KitchenClock clock;

    TimeLine(Plan plan, Schedule schedule, KitchenClock clock) {
        this.plan = plan;
        this.schedule = schedule;
        this.clock = clock;
    }

    void write(Html html) {
        String says = Show.capital(ScheduleWords.says(schedule)) + ".";
        html.open("section").element("h3", "Order of work").line();
        html.open("div", "class", "work").line();
        Figure.open(html, "timeline", "At a glance", says);
        new TimeLineChart(schedule, clock, this::tag, this::look).draw(html, says);
        html.open("ul", "class", "key").line();
        plan.batches().forEach(batch -> {
            Series series = Series.of(plan, batch.dish());
            html.open("li").element("b", series.letter(), "class", "swatch " + series.look());
            html.open("span").name(batch.dish().name()).close().close().line();
        });
        html.close().close().line();
        html.open("div");
        table().write(html);
        ScheduleWords.standing(schedule).forEach(stands -> html.element("p", stands, "class", "hot"));
        html.element("p", ScheduleWords.note(schedule), "class", "note").close();
        html.close().close().line();
    }

    private record Line(int minute, List<String> cells) {}

    private Table table() {
        List<Line> lines = new ArrayList<>();
        schedule.settings().forEach(setting -> lines.add(line(setting)));
        schedule.steps().forEach(step -> lines.add(line(step)));
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

    private Line line(OvenSetting setting) {
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

    private Line line(PlacedStep step) {
        return new Line(
                step.start(),
                List.of(
                        clock.text(step.start()),
                        tag(step),
                        FirstWords.of(step.text(), 60),
                        step.handsOnMinutes() == 0 ? "–" : clock.text(step.handsOnUntil()),
                        clock.text(step.end()),
                        ScheduleWords.place(step)));
    }

    /** A3: the letter of the dish and the number of the step below it; the letter alone fills containers. */
    private String tag(PlacedStep step) {
        String number =
                step.number().isPresent() ? Integer.toString(step.number().getAsInt()) : "";
        return Series.of(plan, step.dish()).letter() + number;
    }

    private String look(PlacedStep step) {
        return Series.of(plan, step.dish()).look();
    }
}
