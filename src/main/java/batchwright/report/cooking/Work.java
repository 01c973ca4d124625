package batchwright.report.cooking;

import batchwright.answer.OneContainer;
import batchwright.food.Dish;
import batchwright.food.HandTimes;
import batchwright.food.Step;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.report.print.Show;
import batchwright.schedule.PlacedStep;
import batchwright.schedule.Schedule;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How much work a dish is in a session, by its schedule.
 *
 * @param minutes on the cooking day, one step after another
 * @param handsOn minutes of them that take the cook's hands
 * @param dayBefore what is to be done the evening before
 */
public record Work(int minutes, int handsOn, List<String> dayBefore) {
    /** Of a batch among all that is cooked in the session. */
    public static Work of(Schedule schedule, Batch batch) {
        List<PlacedStep> steps = schedule.steps().stream()
                .filter(step -> step.dish().equals(batch.dish()))
                .toList();
        return new Work(
                steps.stream().mapToInt(PlacedStep::minutes).sum(),
                steps.stream().mapToInt(PlacedStep::handsOnMinutes).sum(),
                dayBefore(batch));
    }

    /** Five middling containers of a dish with all its parts, for questions about the dish alone. */
    public static Batch usual(Dish dish) {
        OneContainer one = OneContainer.of(dish, OneContainer.Size.MIDDLE, true);
        return new Batch(dish, List.of(new Fill(Optional.empty(), Step.FOR_CONTAINERS, one.portions())));
    }

    /** Steps of the evening before that are done: those of parts that no container has are dropped. */
    public static List<String> dayBefore(Batch batch) {
        return batch.dish().steps().stream()
                .filter(step -> step.dayBefore() && batch.takes(step))
                .map(Step::text)
                .toList();
    }

    /** 132 minutes one step after another, 24 of them hands on */
    public String says() {
        return Show.count(minutes, "minute", "minutes") + " one step after another, " + handsOn + " of them hands on";
    }

    /** What the minutes are valid for; empty when they are valid for any batch. */
    public static Optional<String> note(Collection<Dish> dishes) {
        List<Dish> guessed =
                dishes.stream().filter(dish -> !HandTimes.areCounted(dish)).toList();
        return guessed.isEmpty()
                ? Optional.empty()
                : Optional.of("Minutes of " + guessed.stream().map(Dish::id).collect(Collectors.joining(", "))
                        + " are written for about " + Step.FOR_CONTAINERS
                        + " containers; for more, those that take the hands are taken in proportion, which for most steps is"
                        + " too much, and washing-up is not counted.");
    }
}
