package batchwright.report.cooking;

import batchwright.food.Dish;
import batchwright.food.Step;
import batchwright.plan.Batch;
import batchwright.report.print.Show;
import java.util.List;
import java.util.function.ToIntFunction;

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

    /** Of all its steps. */
    public static Work of(Dish dish) {
        return of(dish.steps());
    }

    /** Of the steps that are done: those of parts that no container has fall away. */
    public static Work of(Batch batch) {
        return of(batch.dish().steps().stream().filter(batch::takes).toList());
    }

    private static Work of(List<Step> steps) {
        return new Work(
                minutes(steps, Step::minutes),
                minutes(steps, Step::handsOnMinutes),
                steps.stream().filter(Step::dayBefore).map(Step::text).toList());
    }

    private static int minutes(List<Step> steps, ToIntFunction<Step> which) {
        return steps.stream().filter(step -> !step.dayBefore()).mapToInt(which).sum();
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
