package batchwright.reference.find;

import batchwright.text.ResourceTable;
import batchwright.text.Words;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What single words say of a food: the table {@code cook_words.csv}. Words are given one, not many. */
final class CookWords {
    private static final Map<String, Set<String>> KINDS =
            ResourceTable.divided(CookWords.class, "cook_words.csv", 2).stream()
                    .collect(Collectors.toMap(
                            row -> row.get(0),
                            row -> Words.of(row.get(1)).stream()
                                    .map(Words::singular)
                                    .collect(Collectors.toSet())));

    private CookWords() {}

    /** It says little: fresh, large. */
    static boolean isSoft(String word) {
        return is("soft", word);
    }

    /** It makes another food of the raw one: boiled, canned. */
    static boolean isState(String word) {
        return is("state", word);
    }

    /** It says that the food is as usual: raw, regular. */
    static boolean isPlain(String word) {
        return is("plain", word);
    }

    /** The first part of a description that only names a class: Nuts, Spices. */
    static boolean isClass(Word word) {
        return is("class", word.text());
    }

    /** What follows only adds to the food: with, in. */
    static boolean endsTheFood(String word) {
        return is("until", word);
    }

    /** A tin of beans is about beans. */
    static boolean isContainer(String word) {
        return is("container", word);
    }

    private static boolean is(String kind, String word) {
        return KINDS.getOrDefault(kind, Set.of()).contains(word);
    }
}
