package batchwright.food;

import batchwright.food.origin.Origins;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Something always at home that goes into a dish: neither counted nor bought, so it is no food of the catalogue. Its
 * allergens and origins are those that its name gives away; of others nothing is known, and the label decides.
 *
 * @param name free text, such as mustard seeds
 * @param grams for one container filled as the recipe is written; empty when it goes in to taste
 */
public record Staple(String name, Set<Allergen> allergens, Origins origins, Optional<BigDecimal> grams) {
    public Staple {
        var ordered = EnumSet.noneOf(Allergen.class);
        ordered.addAll(allergens);
        allergens = Collections.unmodifiableSet(ordered);
    }

    /** To taste, with the allergens and origins that its name tells of. */
    public static Staple of(String name) {
        return of(name, Optional.empty());
    }

    public static Staple of(String name, Optional<BigDecimal> grams) {
        var told = EnumSet.noneOf(Allergen.class);
        AllergenWords.in(List.of(name)).forEach(hint -> told.addAll(hint.allergens()));
        return new Staple(name, told, OriginWords.of(name), grams);
    }

    /** Of which a day has a limit. */
    public boolean isSalt() {
        return id().equals("salt");
    }

    /** As a profile writes it: black_pepper. */
    public String id() {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    }

    @Override
    public String toString() {
        return name;
    }
}
