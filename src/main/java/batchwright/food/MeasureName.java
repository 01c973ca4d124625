package batchwright.food;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;

/**
 * Names of household measures in the plural: cups, small pots, cups of shreds. Files name a measure in the singular; people
 * write and read more than one of it in the plural.
 */
public final class MeasureName {
    private static final String OF = " of ";
    private static final Set<String> SIZES = Set.of("small", "medium", "large", "extra large", "jumbo");

    private static final Set<String> ABBREVIATIONS = Set.of("tbsp", "tsp", "oz", "lb", "g");

    private static final Map<String, String> IRREGULAR =
            Map.of("half", "halves", "leaf", "leaves", "loaf", "loaves", "berry", "berries", "patty", "patties");

    private MeasureName() {}

    /** The plural: of "cup of shreds" it is "cups of shreds", of "small box" it is "small boxes". */
    public static String plural(String name) {
        int of = name.indexOf(OF);
        String head = of < 0 ? name : name.substring(0, of);
        String rest = of < 0 ? "" : name.substring(of);
        if (SIZES.contains(head) || ABBREVIATIONS.contains(head)) {
            return name;
        }
        int word = head.lastIndexOf(' ') + 1;
        return head.substring(0, word) + pluralWord(head.substring(word)) + rest;
    }

    /** So many of them in front of a food: 1 cup, 2 cups, 2 tbsp; 2 x medium, as "2 medium banana" would be no English. */
    public static String counted(int count, String name) {
        String times = count > 1 && SIZES.contains(name) ? " x " : " ";
        return count + times + of(BigDecimal.valueOf(count), name);
    }

    private static String pluralWord(String word) {
        if (IRREGULAR.containsKey(word)) {
            return IRREGULAR.getOrDefault(word, word);
        }
        boolean hisses = word.endsWith("s") || word.endsWith("x") || word.endsWith("ch") || word.endsWith("sh");
        return word + (hisses ? "es" : "s");
    }

    /** The name as it is said of so many: 1/2 cup, 1 cup, 1 1/2 cups. */
    public static String of(BigDecimal count, String name) {
        return count.compareTo(BigDecimal.ONE) > 0 ? plural(name) : name;
    }
}
