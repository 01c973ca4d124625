package batchwright.schedule;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A step of a dish with its time. Minutes count from the start of the session.
 *
 * @param places the burners, or the shelves of the oven, counted from 1; empty when neither is used
 */
public record PlacedStep(Task task, int start, List<Integer> places) {
    public PlacedStep {
        places = List.copyOf(places);
    }

    public Dish dish() {
        return task.dish();
    }

    /** Of the step in the dish, the first being 1; empty for filling the containers and washing up, where no step of the dish does. */
    public OptionalInt number() {
        return task.number();
    }

    public String text() {
        return task.text();
    }

    /** Until when it takes the cook's hands; {@link #start} if it does not. */
    public int handsOnUntil() {
        return start + task.work().handsOnMinutes();
    }

    public int end() {
        return start + task.work().minutes();
    }

    /** What it occupies from start to end. */
    public Optional<Appliance> on() {
        return task.way().on();
    }

    /** Oven temperature, when the oven is used. */
    public OptionalInt celsius() {
        return task.way().celsius();
    }

    public int minutes() {
        return task.work().minutes();
    }

    public int handsOnMinutes() {
        return task.work().handsOnMinutes();
    }
}
