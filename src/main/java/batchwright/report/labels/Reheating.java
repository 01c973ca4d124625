package batchwright.report.labels;

import batchwright.food.Dish;
import batchwright.plan.Portion;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How a box is heated; the temperature is always named.
 *
 * @param portions of each part of the dish
 */
record Reheating(Dish dish, List<Portion> portions) {
    private static final String HOT = "74\u00a0°C (165\u00a0°F)";

    /** As the dish says it, but for sentences that speak of what is not in this box. */
    String inFull() {
        String says = Arrays.stream(dish.reheat().split("(?<=\\.) ", -1))
                .filter(sentence -> !DishTitle.namesWhatIsLeftOut(sentence, portions))
                .collect(Collectors.joining(" "));
        if (says.isEmpty()) {
            return "Reheat: " + inShort() + ".";
        }
        return "Reheat: " + (says.contains("74 C") ? says : says + " Reheat until steaming, " + HOT + " inside.");
    }

    /** Without a full stop. */
    String inShort() {
        return orCold("until steaming, " + HOT + " inside");
    }

    /** The same in a few words. */
    String inLeast() {
        return orCold("to " + HOT);
    }

    private String orCold(String how) {
        return dish.reheat().toLowerCase(Locale.ROOT).startsWith("eat cold") ? how + ", or eat cold" : how;
    }
}
