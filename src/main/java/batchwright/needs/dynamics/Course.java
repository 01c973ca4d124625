package batchwright.needs.dynamics;

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
public record Course(List<BodyState> weeks, Optional<String> stopped) {
    private static final double DAYS_A_WEEK = 7;

    public static Course of(Body body, BodyModel model, Energy intake, int weeks) {
        var limits = new SafeLimits(body, model.start());
        List<BodyState> states = new ArrayList<>(List.of(model.start()));
        for (int week = 1; week <= weeks; week++) {
            BodyState next = model.after(DAYS_A_WEEK, intake, states.get(week - 1));
            Optional<String> broken = limits.broken(next);
            if (broken.isPresent()) {
                return new Course(List.copyOf(states), broken);
            }
            states.add(next);
        }
        return new Course(List.copyOf(states), Optional.empty());
    }

    /** The body after so many weeks; empty when the course has stopped before. */
    public Optional<BodyState> after(int week) {
        return week < weeks.size() ? Optional.of(weeks.get(week)) : Optional.empty();
    }

    public int lastWeek() {
        return weeks.size() - 1;
    }
}
