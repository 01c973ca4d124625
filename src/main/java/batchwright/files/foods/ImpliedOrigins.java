package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import batchwright.text.Written;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/** Refuses origins that are silent about what the allergens of the same line name. */
record ImpliedOrigins(Origins origins, Set<Allergen> allergens) {
    private static final Map<Allergen, Set<Origin>> ONE_OF = new EnumMap<>(Map.of(
            Allergen.MILK, Set.of(Origin.MILK),
            Allergen.EGG, Set.of(Origin.EGG),
            Allergen.FISH, Set.of(Origin.FISH),
            Allergen.CRUSTACEAN, Set.of(Origin.CRUSTACEAN),
            Allergen.MOLLUSC, Set.of(Origin.MOLLUSC),
            Allergen.WHEAT, Set.of(Origin.GLUTEN_CEREAL),
            Allergen.GLUTEN, Set.of(Origin.GLUTEN_CEREAL, Origin.OATS)));

    void check(Written cell, Problems problems) {
        for (Allergen allergen : allergens) {
            Set<Origin> oneOf = ONE_OF.getOrDefault(allergen, Set.of());
            if (!oneOf.isEmpty() && oneOf.stream().noneMatch(this::isSaid)) {
                String origin =
                        oneOf.stream().sorted().findFirst().orElseThrow().id();
                problems.error(
                        cell,
                        "the allergens name %s, and the origins say nothing of it".formatted(allergen.id()),
                        "expected %s among the origins, or %s? when only some makers add it".formatted(origin, origin));
            }
        }
    }

    private boolean isSaid(Origin origin) {
        return origins.certain().contains(origin) || origins.doubtful().contains(origin);
    }
}
