package batchwright.report.export;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/**
 * Events as an iCalendar file (RFC 5545). Times are those of the clock on the wall, wherever the cook is ("floating", 3.3.5).
 * Nothing in it depends on the moment of writing.
 */
final class ICalendar {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
    /** Calendars that write such a file anew put their own name here. */
    static final String MAKER = "-//Batchwright//Batchwright plan//EN";
    /** Of the reminder of a whole day. */
    private static final String MORNING = "PT8H";

    private final String plan;
    private final LocalDate made;
    private final ContentLines lines = new ContentLines();

    private ICalendar(String plan, LocalDate made) {
        this.plan = plan;
        this.made = made;
    }

    /**
     * @param plan different for plans that may stand in one calendar
     * @param made the day of the plan, which counts as the day of writing
     */
    static String of(String plan, LocalDate made, List<CalendarEvent> events) {
        var calendar = new ICalendar(plan, made);
        calendar.write(events);
        return calendar.lines.toString();
    }

    private void write(List<CalendarEvent> events) {
        lines.add("BEGIN", "VCALENDAR")
                .add("VERSION", "2.0")
                .text("PRODID", MAKER)
                .add("CALSCALE", "GREGORIAN");
        events.forEach(this::event);
        lines.add("END", "VCALENDAR");
    }

    private void event(CalendarEvent event) {
        lines.add("BEGIN", "VEVENT").add("UID", uid(event)).add("DTSTAMP", TIME.format(made.atStartOfDay()) + "Z");
        event.at().ifPresentOrElse(at -> timed(event, at), () -> wholeDay(event.day()));
        lines.text("SUMMARY", event.summary());
        if (!event.lines().isEmpty()) {
            lines.text("DESCRIPTION", String.join("\n", event.lines()));
        }
        if (event.reminds()) {
            reminder(event);
        }
        lines.add("END", "VEVENT");
    }

    private void timed(CalendarEvent event, LocalTime at) {
        LocalDateTime start = event.day().atTime(at);
        lines.add("DTSTART", TIME.format(start)).add("DTEND", TIME.format(start.plusMinutes(event.minutes())));
    }

    /** Its end is the day after; it does not make the day look busy. */
    private void wholeDay(LocalDate day) {
        lines.add("DTSTART;VALUE=DATE", DAY.format(day))
                .add("DTEND;VALUE=DATE", DAY.format(day.plusDays(1)))
                .add("TRANSP", "TRANSPARENT");
    }

    private void reminder(CalendarEvent event) {
        lines.add("BEGIN", "VALARM")
                .add("ACTION", "DISPLAY")
                .add("TRIGGER", event.at().isPresent() ? "PT0S" : MORNING)
                .text("DESCRIPTION", event.summary())
                .add("END", "VALARM");
    }

    /** Made of the name alone (RFC 4122, version 3), so that the same plan has the same. */
    private String uid(CalendarEvent event) {
        String name = "batchwright/" + plan + "/" + event.key();
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
