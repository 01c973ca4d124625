package batchwright.food;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Something always at home that goes into a dish: neither counted nor bought, so it is no food of the catalogue. Its
 * allergens are those that its name gives away; of others nothing is known, and the label decides.
 *
 * @param name free text, such as mustard seeds
 * @param grams for one container filled as the recipe is written; empty when it goes in to taste
 */
public record Staple(String name, Set<Allergen> allergens, Optional<BigDecimal> grams) {
    public Staple {
        var ordered = EnumSet.noneOf(Allergen.class);
        ordered.addAll(allergens);
        allergens = Collections.unmodifiableSet(ordered);
    }

    /** To taste, with the allergens that its name tells of. */
    public static Staple of(String name) {
        return of(name, Optional.empty());
    }

    public static Staple of(String name, Optional<BigDecimal> grams) {
        var told = EnumSet.noneOf(Allergen.class);
        AllergenWords.in(List.of(name)).forEach(hint -> told.addAll(hint.allergens()));
        return new Staple(name, told, grams);
    }

    @Override
    public String toString() {
        return name;
    }
}
