package batchwright.schedule;

import batchwright.food.Dish;
import batchwright.food.Step.Appliance;
import batchwright.schedule.search.Activity;
import batchwright.schedule.search.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something to be placed in time: a step of a dish, or filling its containers.
 *
 * @param shelves 0 unless it is in the oven
 * @param after what must have ended, by its index among all tasks
 */
record Task(
        Dish dish,
        OptionalInt number,
        String text,
        int minutes,
        int handsOnMinutes,
        Optional<Appliance> on,
        OptionalInt celsius,
        int shelves,
        List<Integer> after) {
    static final int COOK = 0;
    static final int BURNERS = 1;
    static final int SHELVES = 2;

    static List<Integer> capacities(Equipment equipment) {
        return List.of(1, equipment.burners(), equipment.shelves());
    }

    Activity activity() {
        List<Need> needs = new ArrayList<>();
        if (handsOnMinutes > 0) {
            needs.add(new Need(COOK, 1, handsOnMinutes));
        }
        if (uses(Appliance.BURNER)) {
            needs.add(new Need(BURNERS, 1, minutes));
        }
        if (uses(Appliance.OVEN)) {
            needs.add(new Need(SHELVES, shelves, minutes));
        }
        return new Activity(minutes, needs, uses(Appliance.OVEN) ? celsius : OptionalInt.empty(), after);
    }

    boolean uses(Appliance appliance) {
        return on.filter(a -> a == appliance).isPresent();
    }

    PlacedStep at(int start, List<Integer> places) {
        return new PlacedStep(dish, number, text, start, start + handsOnMinutes, start + minutes, on, celsius, places);
    }
}
