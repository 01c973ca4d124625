package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.dynamics.Course;
import batchwright.needs.dynamics.SafeLimits;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an intake does when it is never changed.
 *
 * @param year the first 52 weeks
 * @param settled the body in the end; empty when it would be too lean for the model
 */
public record Held(Energy intake, Course year, Optional<BodyState> settled) {
    /** Weeks whose weight is said. */
    public static final List<Integer> WEEKS = List.of(12, 52);

    private static final int YEAR_WEEKS = 52;

    static Held of(Body body, BodyModel model, Energy intake) {
        Course year = Course.of(body, model, intake, YEAR_WEEKS);
        BodyState settled = model.settled(intake);
        boolean lean = new SafeLimits(body, model.start()).broken(settled).isPresent();
        return new Held(intake, year, lean ? Optional.empty() : Optional.of(settled));
    }

    /** A sentence without its stop. */
    String says() {
        List<String> weights = Stream.concat(
                        WEEKS.stream()
                                .flatMap(week ->
                                        year.after(week).stream().map(body -> kg(body) + " kg in " + week + " weeks")),
                        settled.stream().map(body -> kg(body) + " kg in the end"))
                .toList();
        String stops = year.stopped()
                .map(why -> "after " + year.lastWeek() + " weeks it has to stop, for " + why)
                .orElse("");
        return "The same " + Numerals.whole(intake.kcal()) + " kcal all along "
                + (weights.isEmpty()
                        ? stops
                        : "lead to about " + String.join(", ", weights) + (stops.isEmpty() ? "" : "; " + stops));
    }

    private static String kg(BodyState body) {
        return Numerals.oneDecimal(body.weightKg());
    }
}
