package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.AllergenWords;
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

    /**
     * Also for a food whose line has errors elsewhere.
     *
     * @param id short name of the food
     * @param words what names and describes it besides
     * @param allergens that its line names
     * @param cell where they stand, or should
     */
    static void check(String id, List<String> words, Set<Allergen> allergens, Written cell, Problems problems) {
        var told = EnumSet.noneOf(Allergen.class);
        told.addAll(allergens);
        hints(id, words).forEach(hint -> {
            var missing = new LinkedHashSet<>(hint.allergens());
            missing.removeAll(told);
            if (!missing.isEmpty()) {
                told.addAll(missing);
                problems.warning(
                        cell.at(),
                        "%s %s not among the allergens of %s"
                                .formatted(listed(missing, " and "), missing.size() == 1 ? "is" : "are", id),
                        "\"%s\" names it: read the label, and add %s unless the label says otherwise"
                                .formatted(hint.word(), listed(missing, " ")));
            }
        });
    }

    private static Stream<AllergenWords.Hint> hints(String id, List<String> words) {
        return AllergenWords.in(Stream.concat(Stream.of(id), words.stream()).toList()).stream();
    }

    private static String listed(Set<Allergen> allergens, String between) {
        return allergens.stream().map(Allergen::id).collect(Collectors.joining(between));
    }
}
