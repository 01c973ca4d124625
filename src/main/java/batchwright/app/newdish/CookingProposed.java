package batchwright.app.newdish;

import batchwright.food.CookedYield;
import batchwright.food.Food;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a food is usually cooked in a batch, among the ways whose yield is known: grains and pulses in water, meat and fish in a pan. What
 * cooks in its own sauce keeps its weight. Our choice; the user may say another.
 */
final class CookingProposed {
    private static final Map<String, List<String>> BY_GROUP = Map.of(
            "grain", List.of("boiled", "soaked"),
            "legume", List.of("boiled", "fried", "baked"),
            "meat", List.of("fried", "roasted", "baked", "simmered"),
            "fish", List.of("baked", "fried", "grilled"),
            "starchy_vegetable", List.of("boiled", "roasted", "baked"));

    private CookingProposed() {}

    static Optional<CookedYield> of(Food food, List<CookedYield> known) {
        return BY_GROUP.getOrDefault(food.group(), List.of()).stream()
                .flatMap(method -> known.stream().filter(y -> y.method().equals(method)))
                .findFirst();
    }

    /** As a step says; empty when it says nothing that is known of the food. */
    static Optional<CookedYield> of(String step, List<CookedYield> known) {
        return known.stream().filter(y -> says(step, y.method())).findFirst();
    }

    private static boolean says(String step, String method) {
        String stem = method.replaceAll("(ed|d)$", "");
        return (" " + step.toLowerCase(java.util.Locale.ROOT)).contains(" " + stem);
    }
}
