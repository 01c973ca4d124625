package batchwright.food;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The least that raw meat, fish and egg must reach in the middle, with the rest that belongs to it: USDA Food Safety and Inspection
 * Service, Safe Minimum Internal Temperature Chart, 14 April 2025. Degrees Celsius are rounded to whole ones, as kitchens do.
 *
 * <p>What a food is, is read from its group and from the words of its name and of the source's description. Meat of which no word
 * is known counts as poultry, red meat without the name of a cut as minced: the hotter one, on the safe side.
 */
public enum CoreTemperature {
    POULTRY(74, 165, 0),
    MINCED_MEAT(71, 160, 0),
    EGG(71, 160, 0),
    MEAT_IN_ONE_PIECE(63, 145, 3),
    FISH(63, 145, 0),
    /** What was cooked before. */
    LEFTOVERS(74, 165, 0);

    public static final String SOURCE = "USDA FSIS, Safe Minimum Internal Temperature Chart, 2025";

    private static final Set<String> BIRDS =
            Set.of("chicken", "turkey", "duck", "goose", "hen", "quail", "pheasant", "poultry");
    private static final Set<String> RED_MEATS =
            Set.of("beef", "veal", "pork", "lamb", "mutton", "goat", "bison", "venison", "ham", "bacon");
    private static final Set<String> MINCED =
            Set.of("ground", "minced", "mince", "sausage", "sausages", "burger", "patty", "patties", "meatballs");
    private static final Set<String> CUTS = Set.of(
            "steak",
            "chop",
            "chops",
            "roast",
            "loin",
            "tenderloin",
            "sirloin",
            "shoulder",
            "round",
            "flank",
            "chuck",
            "stew",
            "leg",
            "rib",
            "ribs",
            "brisket",
            "shank",
            "rump");
    /** Of foods that are eaten as they are, or heated up like leftovers. */
    private static final Set<String> READY = Set.of(
            "cooked",
            "canned",
            "boiled",
            "roasted",
            "grilled",
            "simmered",
            "jerky",
            "prepackaged",
            "packaged",
            "powder");

    private final int celsius;
    private final int fahrenheit;
    private final int restMinutes;

    CoreTemperature(int celsius, int fahrenheit, int restMinutes) {
        this.celsius = celsius;
        this.fahrenheit = fahrenheit;
        this.restMinutes = restMinutes;
    }

    /** Empty for a food that is no raw meat, fish or egg. */
    public static Optional<CoreTemperature> of(Food food) {
        Set<String> words = words(food);
        boolean ready = !words.contains("raw") && hasAny(words, READY);
        if (ready) {
            return Optional.empty();
        }
        return switch (food.group()) {
            case "egg" -> Optional.of(EGG);
            case "fish" -> Optional.of(FISH);
            case "meat" -> Optional.of(ofMeat(words));
            default -> Optional.empty();
        };
    }

    private static CoreTemperature ofMeat(Set<String> words) {
        if (hasAny(words, BIRDS) || !hasAny(words, RED_MEATS)) {
            return POULTRY;
        }
        return hasAny(words, CUTS) && !hasAny(words, MINCED) ? MEAT_IN_ONE_PIECE : MINCED_MEAT;
    }

    private static boolean hasAny(Set<String> words, Set<String> looked) {
        return looked.stream().anyMatch(words::contains);
    }

    private static Set<String> words(Food food) {
        return Stream.of(food.id(), food.name(), food.description())
                .flatMap(text -> Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z]+")))
                .collect(Collectors.toCollection(HashSet::new));
    }

    public int celsius() {
        return celsius;
    }

    public int fahrenheit() {
        return fahrenheit;
    }

    /** Off the heat, before it is cut. */
    public int restMinutes() {
        return restMinutes;
    }
}
