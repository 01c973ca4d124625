package batchwright.report.cooking;

import batchwright.food.Step.Appliance;
import batchwright.report.print.Show;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.Locale;
import java.util.stream.Collectors;

/** The order of work in words, the same on a terminal and in the report. */
public final class ScheduleWords {
    private static final int HOUR = 60;
    /** Longer than a working day with its breaks: common sense, nothing published. */
    private static final int LONG_DAY = 9 * HOUR;

    private ScheduleWords() {}

    /** About 1 h 25 min, 52 min of it hands on; no order takes less */
    public static String says(Schedule schedule) {
        String bound = schedule.proven()
                ? "no order takes less"
                : "at least " + duration(schedule.lowerBoundMinutes()) + " in any order";
        return "about " + duration(schedule.minutes()) + ", " + duration(schedule.handsOnMinutes())
                + " of it hands on; " + bound;
    }

    /** What is taken for granted. */
    public static String note(Schedule schedule) {
        return "One cook, " + Show.count(schedule.equipment().burners(), "burner", "burners") + ", one oven of "
                + Show.count(schedule.equipment().shelves(), "shelf", "shelves")
                + ". Hands: until when a step needs the cook. Stirring, draining and taking out go on beside other work"
                + " and are not counted; of more than 5 containers the hands-on minutes grow, and trays."
                + (schedule.minutes() > LONG_DAY
                        ? " This is a very long day of cooking: fewer days, or several sessions (--cooks), make it shorter."
                        : "");
    }

    /** burner 1; shelf 1+2; empty when neither is used. */
    public static String place(PlacedStep step) {
        String places = step.places().stream().map(String::valueOf).collect(Collectors.joining("+"));
        return step.on()
                .map(a -> (a == Appliance.OVEN ? "shelf" : a.name().toLowerCase(Locale.ROOT)) + " " + places)
                .orElse("");
    }

    /** Since the start of the session: 1:05 */
    public static String clock(int minute) {
        return minute / HOUR + ":" + String.format(Locale.ROOT, "%02d", minute % HOUR);
    }

    /** 1 h 25 min */
    public static String duration(int minutes) {
        String hours = minutes < HOUR ? "" : minutes / HOUR + " h";
        String rest = minutes % HOUR == 0 && minutes > 0 ? "" : minutes % HOUR + " min";
        return (hours + " " + rest).strip();
    }
}
