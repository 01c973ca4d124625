package batchwright.schedule;

import batchwright.food.Dish;
import batchwright.food.Step.Appliance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A step of a dish with its time. Minutes count from the start of the session.
 *
 * @param number of the step in the dish, the first being 1; empty for filling the containers, where no step of the dish does
 * @param handsOnUntil until when it takes the cook's hands; {@code start} when not at all
 * @param on what it occupies from start to end
 * @param celsius oven temperature, when the oven is used
 * @param places the burner, or the shelves of the oven, counted from 1; empty when neither is used
 */
public record PlacedStep(
        Dish dish,
        OptionalInt number,
        String text,
        int start,
        int handsOnUntil,
        int end,
        Optional<Appliance> on,
        OptionalInt celsius,
        List<Integer> places) {
    public PlacedStep {
        places = List.copyOf(places);
    }

    public int handsOnMinutes() {
        return handsOnUntil - start;
    }
}
