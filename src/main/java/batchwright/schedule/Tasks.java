package batchwright.schedule;

import batchwright.food.Dish;
import batchwright.food.Equipment;
import batchwright.food.HandTimes;
import batchwright.food.Step;
import batchwright.food.Way;
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
import java.util.stream.Stream;

/** The tasks of a session: every step of the cooking day that is done, filling where no step does so, and washing up. */
final class Tasks {
    /** To weigh and close one container of a dish whose minutes follow no law; common practice, not measured. */
    private static final int FILL_MINUTES = 1;

    private static final Way BY_HAND = new Way(Optional.empty(), OptionalInt.empty(), 1, List.of(), Optional.empty());

    private final Equipment equipment;
    private final List<Task> tasks = new ArrayList<>();

    private Tasks(Equipment equipment) {
        this.equipment = equipment;
    }

    static List<Task> of(List<Batch> batches, Equipment equipment) {
        var tasks = new Tasks(equipment);
        batches.forEach(tasks::cook);
        tasks.washUp(batches);
        return tasks.tasks;
    }

    private void cook(Batch batch) {
        Dish dish = batch.dish();
        int first = tasks.size();
        OptionalInt filling = OptionalInt.empty();
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
                if (step.fills() && filling.isEmpty()) {
                    filling = OptionalInt.of(tasks.size());
                }
                tasks.add(task(batch, number, step, after));
            }
        }
        if (filling.isEmpty()) {
            filling = OptionalInt.of(tasks.size());
            tasks.add(filling(batch, lastFrom(first)));
        }
        standing(dish, first, filling.getAsInt());
    }

    private static List<Integer> after(Step step, Map<Integer, List<Integer>> ends) {
        return step.after().stream()
                .flatMap(number -> ends.getOrDefault(number, List.of()).stream())
                .distinct()
                .sorted()
                .toList();
    }

    private Task task(Batch batch, int number, Step step, List<Integer> after) {
        Way way = step.way(equipment).orElse(step.way());
        return new Task(
                batch.dish(),
                OptionalInt.of(number),
                step.text(),
                way,
                LawfulWork.of(batch, step, way, equipment),
                after,
                List.of());
    }

    private static Task filling(Batch batch, List<Integer> after) {
        int containers = batch.containers();
        int minutes = HandTimes.areCounted(batch.dish())
                ? HandTimes.whole(LawfulWork.portioning(batch))
                : FILL_MINUTES * containers;
        String text = containers == 1
                ? "Fill the container by weight and chill it."
                : "Fill the " + containers + " containers by weight and chill them.";
        return byHand(batch.dish(), text, minutes, after);
    }

    private static Task byHand(Dish dish, String text, int minutes, List<Integer> after) {
        var work = new StepWork(minutes, minutes, 0, Optional.empty());
        return new Task(dish, OptionalInt.empty(), text, BY_HAND, work, after, List.of());
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

    /** What was heated waits until it is heated again or is in its containers, whichever comes first on each way there. */
    private void standing(Dish dish, int first, int filling) {
        var limits = new Standing(dish);
        Map<Integer, List<Integer>> hot = new HashMap<>();
        for (int i = first; i < tasks.size(); i++) {
            Task task = tasks.get(i);
            List<Integer> waiting = task.after().stream()
                    .flatMap(before -> tasks.get(before).cooks()
                            ? Stream.of(before)
                            : hot.getOrDefault(before, List.of()).stream())
                    .distinct()
                    .toList();
            if (task.heats() || i == filling) {
                boolean untilEnd = !task.heats();
                tasks.set(
                        i,
                        task.with(waiting.stream()
                                .map(before -> new Task.Wait(
                                        before,
                                        limits.most(tasks.get(before).number().orElseThrow()),
                                        untilEnd))
                                .toList()));
            } else {
                hot.put(i, waiting);
            }
        }
    }

    /** A task for each dish once its containers are filled; the last wipe belongs to the last of them. */
    private void washUp(List<Batch> batches) {
        List<Batch> counted = batches.stream()
                .filter(batch -> HandTimes.areCounted(batch.dish()))
                .toList();
        for (int i = 0; i < counted.size(); i++) {
            boolean last = i == counted.size() - 1;
            Batch batch = counted.get(i);
            double minutes = HandTimes.WASH_BOARD + (last ? HandTimes.WIPE : 0);
            for (Step step : batch.dish().steps()) {
                minutes += batch.takes(step) ? HandTimes.washing(batch.dish(), step) : 0;
            }
            Set<Integer> followed = new HashSet<>();
            tasks.forEach(task -> followed.addAll(task.after()));
            List<Integer> after = IntStream.range(0, tasks.size())
                    .boxed()
                    .filter(task -> !followed.contains(task)
                            && (last || tasks.get(task).dish().equals(batch.dish())))
                    .toList();
            String text = last ? "Wash up what is left, and wipe the kitchen down." : "Wash up pots, trays and boards.";
            tasks.add(byHand(batch.dish(), text, HandTimes.whole(minutes), after));
        }
    }
}
