package batchwright.food;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Something always at home that goes into a dish: neither weighed, counted nor bought, so it is no food of the catalogue. Its
 * allergens are those that its name gives away; of others nothing is known, and the label decides.
 *
 * @param name free text, such as mustard seeds
 */
public record Staple(String name, Set<Allergen> allergens) {
    public Staple {
        var ordered = EnumSet.noneOf(Allergen.class);
        ordered.addAll(allergens);
        allergens = Collections.unmodifiableSet(ordered);
    }

    /** With the allergens that its name tells of. */
    public static Staple of(String name) {
        var told = EnumSet.noneOf(Allergen.class);
        AllergenWords.in(List.of(name)).forEach(hint -> told.addAll(hint.allergens()));
        return new Staple(name, told);
    }

    @Override
    public String toString() {
        return name;
    }
}
