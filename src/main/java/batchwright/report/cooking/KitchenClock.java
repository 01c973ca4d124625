package batchwright.report.cooking;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;

/**
 * How the minutes of a session are written.
 *
 * @param start when cooking starts; where that is not known, minutes are written since the start
 */
public record KitchenClock(Optional<LocalTime> start) {
    /** Since the start of the session. */
    public static final KitchenClock FROM_ZERO = new KitchenClock(Optional.empty());

    /** 0:34 since the start; 10:34 by the clock. */
    public String text(int minute) {
        return start.map(at -> at.plusMinutes(minute))
                .map(at -> String.format(Locale.ROOT, "%d:%02d", at.getHour(), at.getMinute()))
                .orElseGet(() -> ScheduleWords.clock(minute));
    }
}
