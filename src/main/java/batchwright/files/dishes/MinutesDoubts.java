package batchwright.files.dishes;

import batchwright.files.disk.DataFiles;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Step;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Doubts about dishes whose minutes are written for five containers only: for more, nobody knows. */
public final class MinutesDoubts {
    private MinutesDoubts() {}

    /** One for each such dish. */
    public static List<Problem> of(DataFiles files, Kitchen kitchen) {
        return kitchen.allDishes().stream()
                .filter(dish -> !withoutLaw(dish).isEmpty())
                .map(dish -> doubt(files, path(kitchen, dish), dish))
                .toList();
    }

    private static String path(Kitchen kitchen, Dish dish) {
        String shelf = kitchen.shelves().shelfOf(dish).map(name -> name + "/").orElse("");
        return "foods/dishes/" + shelf + dish.id() + ".yaml";
    }

    private static Problem doubt(DataFiles files, String path, Dish dish) {
        var file = new SourceFile(files.shown(path), List.of());
        List<Integer> steps = withoutLaw(dish);
        return Problem.warning(
                Span.whole(file),
                (steps.size() == 1 ? "the minutes of step %s are" : "the minutes of steps %s are")
                                .formatted(steps.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                        + " for " + Step.FOR_CONTAINERS + " containers only: a larger batch is taken in proportion",
                "expected how they grow, such as hand_work: {start: 2, onion: 8} or by_itself: 20 in place of minutes"
                        + " and hands_on");
    }

    /** Numbers of the steps of the cooking day whose minutes follow no law, the first being 1. */
    private static List<Integer> withoutLaw(Dish dish) {
        return IntStream.rangeClosed(1, dish.steps().size())
                .filter(number -> {
                    Step step = dish.steps().get(number - 1);
                    return step.isForFive() && !step.dayBefore();
                })
                .boxed()
                .toList();
    }
}
