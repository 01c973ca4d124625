package batchwright.schedule;

import batchwright.food.Appliance;
import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.Handled;
import batchwright.food.Step;
import batchwright.food.Way;
import batchwright.schedule.search.Activity;
import batchwright.schedule.search.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Something to be placed in time: a step of a dish, filling its containers, or washing up.
 *
 * @param number of the step in the dish, the first being 1; empty where no step of the dish does it
 * @param way in which it is done
 * @param after what must have ended, by its index among all tasks
 * @param waits what must not stand too long until this is done
 */
public record Task(
        Dish dish, OptionalInt number, String text, Way way, StepWork work, List<Integer> after, List<Wait> waits) {
    /**
     * @param before the task that cooked it, by its index
     * @param most minutes
     * @param untilEnd whether until the end of this task, which fills containers; else until its start, which heats it again
     */
    record Wait(int before, int most, boolean untilEnd) {
        /** For a search: filling alone may take longer, and then nothing else may stand between. */
        batchwright.schedule.search.Wait forSearch(int minutes) {
            return new batchwright.schedule.search.Wait(before, untilEnd ? Math.max(most, minutes) : most + minutes);
        }
    }

    private static final List<Appliance> APPLIANCES = List.of(Appliance.values());
    private static final int COOK = 0;
    private static final int VESSELS = APPLIANCES.size() + 1;
    /** Of couscous and the like, in foods/yields.csv. */
    private static final String SOAKED = "soaked";

    public Task {
        after = List.copyOf(after);
        waits = List.copyOf(waits);
    }

    /** The cooks, then each appliance, then pots and pans. What is missing is counted as there, once. */
    static List<Integer> capacities(Equipment equipment) {
        List<Integer> capacities = new ArrayList<>();
        capacities.add(equipment.cooks());
        for (Appliance appliance : APPLIANCES) {
            capacities.add(Math.max(1, equipment.places(appliance)));
        }
        capacities.add(Math.max(1, equipment.pots().size() + equipment.pans().size()));
        return capacities;
    }

    Activity activity() {
        List<Need> needs = new ArrayList<>();
        if (work.handsOnMinutes() > 0) {
            needs.add(new Need(COOK, 1, work.handsOnMinutes()));
        }
        way.on()
                .ifPresent(a ->
                        needs.add(new Need(1 + APPLIANCES.indexOf(a), Math.max(1, work.places()), work.minutes())));
        if (way.uses(Appliance.BURNER)) {
            needs.add(new Need(VESSELS, Math.max(1, work.places()), work.minutes()));
        }
        return new Activity(
                work.minutes(),
                needs,
                way.uses(Appliance.OVEN) ? way.celsius() : OptionalInt.empty(),
                after,
                waits.stream().map(wait -> wait.forSearch(work.minutes())).toList());
    }

    boolean heats() {
        return way.on().isPresent();
    }

    /** Whether what it makes is cooked, so that it must not stand: heated, or swollen in boiling water. */
    boolean cooks() {
        return heats() || (number.isPresent() && soaks(dish.steps().get(number.getAsInt() - 1)));
    }

    private boolean soaks(Step step) {
        return step.with().stream()
                .anyMatch(handled -> handled instanceof Handled.OfFood food
                        && dish.parts().stream()
                                .flatMap(part -> part.mix().stream())
                                .filter(i -> i.food().equals(food.food()))
                                .flatMap(i -> i.cooked().stream())
                                .anyMatch(cooked -> cooked.method().equals(SOAKED)));
    }

    Task with(List<Wait> other) {
        return new Task(dish, number, text, way, work, after, other);
    }
}
