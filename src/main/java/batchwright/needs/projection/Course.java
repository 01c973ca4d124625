package batchwright.needs.projection;

import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One body through the weeks, at one intake.
 *
 * @param weeks the body at the end of each week; the first is now
 * @param stopped why it ends before the weeks asked for
 */
record Course(List<BodyState> weeks, Optional<String> stopped) {
    private static final double DAYS_A_WEEK = 7;

    static Course of(Body body, Baseline baseline, Energy intake, int weeks) {
        var model = new Hall2011(baseline, intake);
        var limits = new SafeLimits(body, baseline.start());
        List<BodyState> states = new ArrayList<>(List.of(baseline.start()));
        BodyState now = baseline.start();
        for (int week = 1; week <= weeks; week++) {
            now = BodyState.of(Integration.FINE.after(DAYS_A_WEEK, model, now.figures()));
            Optional<String> broken = limits.broken(now);
            if (broken.isPresent()) {
                return new Course(List.copyOf(states), broken);
            }
            states.add(now);
        }
        return new Course(List.copyOf(states), Optional.empty());
    }

    /** The body after so many weeks; empty when the course has stopped before. */
    Optional<BodyState> after(int week) {
        return week < weeks.size() ? Optional.of(weeks.get(week)) : Optional.empty();
    }

    int lastWeek() {
        return weeks.size() - 1;
    }
}
