package batchwright.report;

import batchwright.food.Dish;
import batchwright.food.Step;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/**
 * How much work a dish is, by its steps.
 *
 * @param minutes on the cooking day, one step after another
 * @param handsOn minutes of them that take the cook's hands
 * @param dayBefore what is to be done the evening before
 */
public record Work(int minutes, int handsOn, List<String> dayBefore) {
    private static final String FOR_SO_MANY =
            "Minutes, pots and trays are meant for about " + Step.FOR_CONTAINERS + " containers of a dish";

    public static Work of(Dish dish) {
        return new Work(
                minutes(dish, Step::minutes),
                minutes(dish, Step::handsOnMinutes),
                steps(dish, true).map(Step::text).toList());
    }

    private static Stream<Step> steps(Dish dish, boolean dayBefore) {
        return dish.steps().stream().filter(step -> step.dayBefore() == dayBefore);
    }

    private static int minutes(Dish dish, ToIntFunction<Step> which) {
        return steps(dish, false).mapToInt(which).sum();
    }

    /** 132 minutes one step after another, 24 of them hands on */
    public String says() {
        return Show.count(minutes, "minute", "minutes") + " one step after another, " + handsOn + " of them hands on";
    }

    /** What the minutes are good for when so many containers of a dish are cooked. */
    public static String note(int mostContainers) {
        return FOR_SO_MANY
                + (mostContainers > Step.FOR_CONTAINERS
                        ? ": more take longer, in larger or more pots and trays, not crowded."
                        : ".");
    }
}
