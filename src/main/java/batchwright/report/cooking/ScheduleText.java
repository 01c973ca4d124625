package batchwright.report.cooking;

import batchwright.report.print.Page;
import batchwright.report.print.TextTable;
import batchwright.schedule.OvenSetting;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The order of work by the clock, a line for each step. */
public final class ScheduleText {
    /** Columns of everything but the words of a step, when a dish has a long id, and of the dots. */
    private static final int REST = 54;

    private final Schedule schedule;
    private final KitchenClock clock;
    private final Page page;

    public ScheduleText(Schedule schedule, KitchenClock clock, Page page) {
        this.schedule = schedule;
        this.clock = clock;
        this.page = page;
    }

    public void write() {
        page.gap().paragraph("", "  ", "ORDER OF WORK: " + ScheduleWords.says(schedule));
        page.gap().table(table());
        page.gap();
        ScheduleWords.standing(schedule).forEach(page::item);
        page.paragraph("  ", "  ", ScheduleWords.note(schedule));
    }

    private record Line(int minute, String[] cells) {}

    private TextTable table() {
        var table = new TextTable("  ")
                .right("at")
                .right("hands")
                .right("done")
                .left("on")
                .left("dish, step")
                .left("");
        List<Line> lines = new ArrayList<>();
        schedule.settings().forEach(setting -> lines.add(oven(setting)));
        schedule.steps().forEach(step -> lines.add(step(step)));
        lines.stream().sorted(Comparator.comparingInt(Line::minute)).forEach(line -> table.row(line.cells));
        return table;
    }

    private Line oven(OvenSetting setting) {
        String[] cells = {
            clock.text(setting.minute()), "", "", "oven", "", "Turn the oven to " + setting.celsius() + " C."
        };
        return new Line(setting.minute(), cells);
    }

    private Line step(PlacedStep step) {
        String number = step.number().isPresent() ? " " + step.number().getAsInt() : "";
        String[] cells = {
            clock.text(step.start()),
            step.handsOnMinutes() == 0 ? "-" : clock.text(step.handsOnUntil()),
            clock.text(step.end()),
            ScheduleWords.place(step),
            step.dish().id() + number,
            firstWords(step.text())
        };
        return new Line(step.start(), cells);
    }

    /** As many words as fit beside the rest; the dish has them all. */
    private String firstWords(String text) {
        String first = Page.wrap(text, page.width() - REST).get(0);
        return first.length() < text.length() ? first.replaceAll("[,.;:]$", "") + " ..." : first;
    }
}
