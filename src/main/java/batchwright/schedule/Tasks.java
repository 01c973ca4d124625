package batchwright.schedule;

import batchwright.food.Dish;
import batchwright.food.Step;
import batchwright.food.Step.Appliance;
import batchwright.plan.Batch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** The tasks of a session: every step of the cooking day that is done, and filling the containers where no step does so. */
final class Tasks {
    /** To weigh and close one container; common practice, not measured. */
    private static final int FILL_MINUTES = 1;

    private final Equipment equipment;
    private final List<Task> tasks = new ArrayList<>();

    private Tasks(Equipment equipment) {
        this.equipment = equipment;
    }

    static List<Task> of(List<Batch> batches, Equipment equipment) {
        var tasks = new Tasks(equipment);
        batches.forEach(batch -> tasks.add(batch));
        return tasks.tasks;
    }

    private void add(Batch batch) {
        Dish dish = batch.dish();
        int first = tasks.size();
        boolean fills = false;
        // Of each step so far, by its number: what has ended when it is done.
        Map<Integer, List<Integer>> ends = new HashMap<>();
        for (int number = 1; number <= dish.steps().size(); number++) {
            Step step = dish.steps().get(number - 1);
            List<Integer> after = after(step, ends);
            if (step.dayBefore()) {
                ends.put(number, List.of());
            } else if (!batch.takes(step)) {
                ends.put(number, after); // what waits for it waits for what it waited for
            } else {
                ends.put(number, List.of(tasks.size()));
                tasks.add(task(dish, number, new BatchWork(step, batch.containers()), after));
                fills |= step.fills();
            }
        }
        if (!fills) {
            tasks.add(filling(dish, batch.containers(), lastFrom(first)));
        }
    }

    private static List<Integer> after(Step step, Map<Integer, List<Integer>> ends) {
        return step.after().stream()
                .flatMap(number -> ends.getOrDefault(number, List.of()).stream())
                .distinct()
                .sorted()
                .toList();
    }

    private Task task(Dish dish, int number, BatchWork work, List<Integer> after) {
        Step step = work.step();
        boolean oven = step.appliance().filter(a -> a == Appliance.OVEN).isPresent();
        return new Task(
                dish,
                OptionalInt.of(number),
                step.text(),
                work.minutes(equipment),
                work.handsOnMinutes(),
                step.appliance(),
                step.celsius(),
                oven ? work.shelves(equipment) : 0,
                after);
    }

    private static Task filling(Dish dish, int containers, List<Integer> after) {
        int minutes = FILL_MINUTES * containers;
        String text = containers == 1
                ? "Fill the container by weight and chill it."
                : "Fill the " + containers + " containers by weight and chill them.";
        return new Task(
                dish, OptionalInt.empty(), text, minutes, minutes, Optional.empty(), OptionalInt.empty(), 0, after);
    }

    /** Those of a dish that nothing follows. */
    private List<Integer> lastFrom(int first) {
        Set<Integer> followed = new HashSet<>();
        tasks.subList(first, tasks.size()).forEach(task -> followed.addAll(task.after()));
        return IntStream.range(first, tasks.size())
                .boxed()
                .filter(task -> !followed.contains(task))
                .toList();
    }
}
