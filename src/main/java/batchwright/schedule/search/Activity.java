package batchwright.schedule.search;

import java.util.List;
import java.util.OptionalInt;

/**
 * Something that takes time, without a break. What it needs it may give back before its end, but it never takes more while it
 * goes on; so starting earlier never gets in the way of what comes later.
 *
 * @param minutes how long, at least 1
 * @param setting what a shared device must be set to all the time, such as an oven's temperature
 * @param after the activities that must have ended, by index
 * @param waits what of earlier activities must not stand too long until this one has ended
 */
public record Activity(int minutes, List<Need> needs, OptionalInt setting, List<Integer> after, List<Wait> waits) {
    public Activity {
        needs = List.copyOf(needs);
        after = List.copyOf(after);
        waits = List.copyOf(waits);
        if (minutes < 1) {
            throw new IllegalArgumentException("minutes (" + minutes + ") must be at least 1.");
        }
        for (Need need : needs) {
            if (need.minutes() > minutes) {
                throw new IllegalArgumentException(
                        "need (" + need + ") is longer than the activity's minutes (" + minutes + ").");
            }
        }
    }

    /** One that nothing stands for. */
    public Activity(int minutes, List<Need> needs, OptionalInt setting, List<Integer> after) {
        this(minutes, needs, setting, after, List.of());
    }
}
