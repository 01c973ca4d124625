package batchwright.food;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A dish as it is when one of its parts is cooked for nobody. Only a part that can be left out and is cooked apart, in steps of its
 * own: what shares a pot with others cannot be taken out of the dish by leaving away its steps.
 */
public final class LeftOutForAll {
    private final Dish dish;
    private final Part part;

    private LeftOutForAll(Dish dish, Part part) {
        this.dish = dish;
        this.part = part;
    }

    /** The dish without the part and its steps; empty where that is not possible. */
    public static Optional<Dish> of(Dish dish, Part part) {
        var leftOut = new LeftOutForAll(dish, part);
        boolean alone = part.optional()
                && dish.steps().stream().anyMatch(leftOut::isOwn)
                && dish.steps().stream().filter(step -> !leftOut.isOwn(step)).noneMatch(leftOut::handlesIt);
        return alone ? Optional.of(leftOut.dish()) : Optional.empty();
    }

    /** Whether the step is for this part alone. */
    private boolean isOwn(Step step) {
        return step.parts().equals(List.of(part.name()));
    }

    private boolean handlesIt(Step step) {
        return step.with().stream().anyMatch(this::isOfIt);
    }

    private boolean isOfIt(Handled handled) {
        return handled.match(new Handled.Cases<>() {
            @Override
            public Boolean food(Handled.OfFood food) {
                return food.part()
                        .map(part.name()::equals)
                        .orElseGet(() -> part.shares().containsKey(food.food()));
            }

            @Override
            public Boolean part(Handled.OfPart of) {
                return of.part().equals(part.name());
            }

            @Override
            public Boolean staple(Handled.OfStaple staple) {
                return false;
            }
        });
    }

    private Dish dish() {
        List<Part> parts =
                dish.parts().stream().filter(other -> !other.equals(part)).toList();
        return new Dish(
                dish.id(),
                dish.name(),
                dish.kind(),
                dish.fridgeDays(),
                dish.freezes(),
                dish.reheat(),
                parts,
                dish.staples(),
                steps());
    }

    private List<Step> steps() {
        Map<Integer, Integer> numbers = new HashMap<>();
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < dish.steps().size(); i++) {
            Step step = dish.steps().get(i);
            if (!isOwn(step)) {
                List<Integer> after = step.after().stream()
                        .filter(numbers::containsKey)
                        .map(numbers::get)
                        .toList();
                steps.add(new Step(
                        step.text(), step.ways(), step.with(), after, step.fills(), step.dayBefore(), step.parts()));
                numbers.put(i + 1, steps.size());
            }
        }
        return steps;
    }
}
