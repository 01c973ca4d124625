package batchwright.files;

import batchwright.food.Allergen;
import batchwright.food.AllergenWords;
import batchwright.food.Food;
import batchwright.text.Written;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Warns when the words of a food tell of an allergen that its line does not name. A forgotten allergen can harm. */
final class ObviousAllergens {
    private ObviousAllergens() {}

    /** @param cell where the allergens stand, or should */
    static void check(Food food, Written cell, Problems problems) {
        var told = EnumSet.copyOf(food.allergens().isEmpty() ? EnumSet.noneOf(Allergen.class) : food.allergens());
        hints(food).forEach(hint -> {
            var missing = new LinkedHashSet<>(hint.allergens());
            missing.removeAll(told);
            if (!missing.isEmpty()) {
                told.addAll(missing);
                problems.warning(
                        cell.at(),
                        "%s %s not among the allergens of %s"
                                .formatted(listed(missing, " and "), missing.size() == 1 ? "is" : "are", food),
                        "\"%s\" tells of it: read the label, and add %s unless the label says otherwise"
                                .formatted(hint.word(), listed(missing, " ")));
            }
        });
    }

    private static Stream<AllergenWords.Hint> hints(Food food) {
        return AllergenWords.in(List.of(food.id(), food.name(), food.description())).stream();
    }

    private static String listed(Set<Allergen> allergens, String between) {
        return allergens.stream().map(Allergen::id).collect(Collectors.joining(between));
    }
}
