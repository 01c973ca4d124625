package batchwright.report;

import batchwright.food.Dish;
import batchwright.food.Step;
import java.util.List;
import java.util.function.Predicate;
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
                minutes(dish, step -> true),
                minutes(dish, Step::handsOn),
                steps(dish, true).map(Step::text).toList());
    }

    private static Stream<Step> steps(Dish dish, boolean dayBefore) {
        return dish.steps().stream().filter(step -> step.dayBefore() == dayBefore);
    }

    private static int minutes(Dish dish, Predicate<Step> which) {
        return steps(dish, false).filter(which).mapToInt(Step::minutes).sum();
    }

    /** 132 minutes one step after another, 24 of them hands on */
    public String says() {
        return Show.count(minutes, "minute", "minutes") + " one step after another, " + handsOn + " of them hands on";
    }

    /** What the minutes are good for when so many containers of so many dishes are cooked. */
    public static String note(int mostContainers, int dishes) {
        return FOR_SO_MANY
                + (mostContainers > Step.FOR_CONTAINERS
                        ? ": more take longer, in larger or more pots and trays, not crowded."
                        : ".")
                + (dishes > 1 ? " Dishes cooked side by side take less than the sum." : "");
    }
}
