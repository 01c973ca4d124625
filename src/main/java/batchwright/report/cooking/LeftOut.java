package batchwright.report.cooking;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Dishes that this kitchen cannot cook, by what they need. */
public final class LeftOut {
    private LeftOut() {}

    /** Ids of dishes by what one of their steps needs: oven or air fryer. Empty when the kitchen can cook them all. */
    public static Map<String, List<String>> byNeed(Kitchen kitchen) {
        Map<String, List<String>> dishes = new LinkedHashMap<>();
        for (Dish dish : kitchen.dishes().values()) {
            kitchen.equipment()
                    .obstacle(dish)
                    .ifPresent(step -> dishes.computeIfAbsent(step.needs(), need -> new ArrayList<>())
                            .add(dish.id()));
        }
        return dishes;
    }

    /** Not in this kitchen, for want of oven: baked_oats, beef_goulash. */
    public static Optional<String> says(Kitchen kitchen) {
        Map<String, List<String>> dishes = byNeed(kitchen);
        return dishes.isEmpty()
                ? Optional.empty()
                : Optional.of("Not in this kitchen, for want of "
                        + dishes.entrySet().stream()
                                .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
                                .collect(Collectors.joining("; for want of "))
                        + ". (foods/kitchen.yaml says what there is.)");
    }
}
