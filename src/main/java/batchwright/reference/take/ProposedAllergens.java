package batchwright.reference.take;

import batchwright.food.Allergen;
import batchwright.reference.Resource;
import batchwright.text.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Allergens that the description of a food gives away: those of the food, and those of its usual shop version. Rather one too many
 * than one too few; what a maker adds cannot be seen, so the label decides. The words stand in allergen_words.csv.
 */
final class ProposedAllergens {
    private static final Set<Allergen> CEREALS = Set.of(Allergen.WHEAT, Allergen.GLUTEN);
    private static final List<Clue> CLUES = Resource.cells("allergen_words.csv").stream()
            .map(cells -> Clue.of(cells.get(0), cells.get(1), cells.get(2)))
            .toList();

    /**
     * @param words any of them gives the allergens away
     * @param misleading phrases that hold such a word and mean something else
     */
    private record Clue(Set<Allergen> allergens, Set<String> words, List<String> misleading) {
        static Clue of(String allergens, String words, String misleading) {
            return new Clue(
                    Stream.of(allergens.split(" ", -1))
                            .map(id -> Allergen.byId(id).orElseThrow())
                            .collect(Collectors.toUnmodifiableSet()),
                    Set.copyOf(Words.of(words)),
                    misleading.isEmpty() ? List.of() : List.of(misleading.split(";", -1)));
        }

        boolean isIn(String description) {
            String text = description;
            for (String phrase : misleading) {
                text = text.replace(phrase, " ");
            }
            return Words.of(text).stream().anyMatch(words::contains);
        }
    }

    private ProposedAllergens() {}

    /** @param sourceGroup the source's food group: in some of them every food holds an allergen */
    static Set<Allergen> of(String sourceGroup, Description description) {
        var allergens = EnumSet.noneOf(Allergen.class);
        String text = description.small();
        CLUES.stream().filter(clue -> clue.isIn(text)).forEach(clue -> allergens.addAll(clue.allergens()));
        if (text.contains("gluten-free")) {
            allergens.removeAll(CEREALS);
        }
        if (sourceGroup.equals("Dairy and Egg Products") && !description.startsWith("egg")) {
            allergens.add(Allergen.MILK);
        }
        boolean shell = allergens.contains(Allergen.CRUSTACEAN) || allergens.contains(Allergen.MOLLUSC);
        if (sourceGroup.equals("Finfish and Shellfish Products")
                && !shell
                && !description.has("frog turtle jellyfish cucumber")) {
            allergens.add(Allergen.FISH);
        }
        return allergens;
    }
}
