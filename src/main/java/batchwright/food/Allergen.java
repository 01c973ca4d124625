package batchwright.food;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Allergens that must be named on food: the nine of the USA (FALCPA 2004, FASTER Act 2021) and the fourteen of the EU
 * (Regulation 1169/2011, Annex II). Wheat is separate from other cereals with gluten, because only the EU names those.
 */
public enum Allergen {
    MILK("milk"),
    EGG("egg"),
    FISH("fish"),
    CRUSTACEAN("crustacean"),
    MOLLUSC("mollusc"),
    TREE_NUT("tree nut"),
    PEANUT("peanut"),
    WHEAT("wheat"),
    GLUTEN("gluten"),
    SOY("soy"),
    SESAME("sesame"),
    CELERY("celery"),
    MUSTARD("mustard"),
    LUPIN("lupin"),
    SULPHITE("sulphite");

    private final String label;

    Allergen(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** As written in the files: tree_nut. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Allergen> byId(String id) {
        return Stream.of(values()).filter(a -> a.id().equals(id)).findFirst();
    }
}
