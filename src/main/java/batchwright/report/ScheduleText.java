package batchwright.report;

import batchwright.food.Step.Appliance;
import batchwright.plan.Plan;
import batchwright.schedule.OvenSetting;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The order of work by the clock, a line for each step. */
final class ScheduleText {
    private static final int HOUR = 60;
    private final Schedule schedule;
    private final Page page;

    ScheduleText(Plan plan, Page page) {
        this.schedule = Schedule.of(plan.batches());
        this.page = page;
    }

    void write() {
        page.heading("ORDER OF WORK: " + says());
        page.gap().table(table());
        page.gap();
        page.paragraph("  ", "  ", note());
    }

    /** About 1 h 25 min, 52 min of it hands on; no order takes less */
    private String says() {
        String bound = schedule.proven()
                ? "no order takes less"
                : "at least " + duration(schedule.lowerBoundMinutes()) + " in any order";
        return "about " + duration(schedule.minutes()) + ", " + duration(schedule.handsOnMinutes())
                + " of it hands on; " + bound;
    }

    private String note() {
        return "One cook, " + Show.count(schedule.equipment().burners(), "burner", "burners") + ", one oven of "
                + Show.count(schedule.equipment().shelves(), "shelf", "shelves")
                + ". Hands: until when a step needs the cook. Stirring, draining and taking out go on beside other work"
                + " and are not counted; of more than 5 containers the hands-on minutes grow, and trays.";
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

    private static Line oven(OvenSetting setting) {
        String[] cells = {clock(setting.minute()), "", "", "oven", "", "Turn the oven to " + setting.celsius() + " C."};
        return new Line(setting.minute(), cells);
    }

    private static Line step(PlacedStep step) {
        String number = step.number().isPresent() ? " " + step.number().getAsInt() : "";
        String[] cells = {
            clock(step.start()),
            step.handsOnMinutes() == 0 ? "-" : clock(step.handsOnUntil()),
            clock(step.end()),
            place(step),
            step.dish().id() + number,
            firstWords(step.text())
        };
        return new Line(step.start(), cells);
    }

    private static String place(PlacedStep step) {
        String places = step.places().stream().map(String::valueOf).collect(Collectors.joining("+"));
        return step.on()
                .map(a -> (a == Appliance.OVEN ? "shelf" : a.name().toLowerCase(Locale.ROOT)) + " " + places)
                .orElse("");
    }

    /** As many words as fit beside the rest; the dish has them all. */
    private static String firstWords(String text) {
        String first = Page.wrap(text, 26).get(0);
        return first.length() < text.length() ? first.replaceAll("[,.;:]$", "") + " ..." : first;
    }

    /** 1:05 */
    private static String clock(int minute) {
        return minute / HOUR + ":" + String.format(Locale.ROOT, "%02d", minute % HOUR);
    }

    /** 1 h 25 min */
    private static String duration(int minutes) {
        String hours = minutes < HOUR ? "" : minutes / HOUR + " h";
        String rest = minutes % HOUR == 0 && minutes > 0 ? "" : minutes % HOUR + " min";
        return (hours + " " + rest).strip();
    }
}
