package batchwright.report.export;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * Something that stands in the calendar.
 *
 * @param key what it is of its plan: different for each event of a plan, the same when the plan is made again
 * @param at when it starts, by the clock on the wall; empty for a whole day
 * @param minutes how long it takes; of no meaning for a whole day
 * @param reminds whether the calendar should remind of it: at its start, or in the morning of a whole day
 * @param summary in one line
 * @param lines more
 */
record CalendarEvent(
        String key,
        LocalDate day,
        Optional<LocalTime> at,
        int minutes,
        boolean reminds,
        String summary,
        List<String> lines) {
    CalendarEvent {
        lines = List.copyOf(lines);
    }

    static CalendarEvent onDay(String key, LocalDate day, boolean reminds, String summary, List<String> lines) {
        return new CalendarEvent(key, day, Optional.empty(), 0, reminds, summary, lines);
    }
}
