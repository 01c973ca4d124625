package batchwright.report.cooking;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Instead;
import batchwright.food.Swap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a dish is cooked with in the place of what its recipe says, and what could be. */
public final class SwapWords {
    private SwapWords() {}

    /** Not as written: canola oil in place of olive oil; no sesame seeds. Empty for a dish that is cooked as it is written. */
    public static Optional<String> of(Dish dish) {
        return dish.swaps().isEmpty()
                ? Optional.empty()
                : Optional.of("Not as written: "
                        + dish.swaps().stream().map(SwapWords::says).collect(Collectors.joining("; ")) + ".");
    }

    private static String says(Swap swap) {
        return swap.by()
                .map(by -> by.name() + " in place of " + swap.food().name())
                .orElse("no " + swap.food().name());
    }

    /** Behind an ingredient: ", or sugar or left out"; nothing where nothing may take its place. */
    public static String choices(Ingredient ingredient) {
        Instead instead = ingredient.instead();
        List<String> choices = new ArrayList<>(
                instead.others().stream().map(Ingredient::food).map(Food::name).toList());
        if (instead.nothing()) {
            choices.add("left out");
        }
        return choices.isEmpty() ? "" : ", or " + String.join(", or ", choices);
    }
}
