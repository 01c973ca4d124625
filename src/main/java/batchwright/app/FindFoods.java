package batchwright.app;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.OtherNames;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Search;
import batchwright.text.NearestName;
import batchwright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Foods by words: each word is a word of the food's id, name or group, its singular or plural, or its beginning; order and letter
 * case do not matter. In the user's catalogue, then in USDA SR28. Other names of foods count as ours. Only when neither has a
 * food that fits is one slip in each word overlooked.
 */
public final class FindFoods {
    private static final int LETTERS_PER_SLIP = 3;

    private final Kitchen kitchen;

    /**
     * What was found.
     *
     * @param yours foods of the catalogue, best first
     * @param reference foods of USDA SR28, best first
     */
    public record Found(List<Food> yours, List<Sr28Food> reference) {
        /** Whether there is nothing. */
        public boolean isEmpty() {
            return yours.isEmpty() && reference.isEmpty();
        }
    }

    public FindFoods(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** The food with exactly this id. */
    public Optional<Food> exactly(List<String> words) {
        return words.size() == 1
                ? Optional.ofNullable(kitchen.foods().get(words.get(0).toLowerCase(Locale.ROOT)))
                : Optional.empty();
    }

    /** Nothing when there is no word. */
    public Found found(Sr28 table, List<String> words) {
        List<String> wanted = wanted(words);
        if (wanted.isEmpty()) {
            return new Found(List.of(), List.of());
        }
        var search = new Sr28Search(table);
        List<List<String>> queries = queries(wanted);
        var found = new Found(matching(queries, false), search.exactly(queries));
        return found.isEmpty() ? new Found(matching(List.of(wanted), true), search.nearly(wanted)) : found;
    }

    /** Foods of the catalogue, best first; all of them in its order when there is no word. */
    public List<Food> matching(List<String> words) {
        List<String> wanted = wanted(words);
        List<Food> found = matching(queries(wanted), false);
        return found.isEmpty() ? matching(List.of(wanted), true) : found;
    }

    /** Foods of the catalogue that fit any of the words, those of the first word first. */
    public List<Food> matchingAny(List<String> words) {
        return wanted(words).stream()
                .flatMap(word -> matching(List.of(word)).stream())
                .distinct()
                .toList();
    }

    private List<Food> matching(List<List<String>> queries, boolean overlookSlips) {
        return FoodRank.bestFirst(kitchen.foods().values(), queries, overlookSlips);
    }

    /** For when nothing matches: known words near those that no food holds. */
    public List<String> nearestWords(Sr28 table, List<String> words) {
        Set<String> known = table.words();
        known.addAll(OtherNames.words());
        kitchen.foods().values().forEach(food -> known.addAll(FoodRank.words(food)));
        return wanted(words).stream()
                .filter(word -> !known.contains(word))
                .flatMap(word -> nearest(word, known).stream())
                .distinct()
                .toList();
    }

    /** One slip was overlooked already; with more, only a long word that begins alike is no guess. */
    private static Optional<String> nearest(String word, Set<String> known) {
        List<String> alike =
                known.stream().filter(k -> k.charAt(0) == word.charAt(0)).toList();
        return NearestName.of(word, alike)
                .filter(near -> near.contains(word)
                        || NearestName.slips(word, near) <= Math.max(1, word.length() / LETTERS_PER_SLIP));
    }

    private static List<List<String>> queries(List<String> wanted) {
        return Stream.concat(Stream.of(wanted), OtherNames.replacedIn(wanted).stream())
                .toList();
    }

    private static List<String> wanted(List<String> words) {
        return Words.of(String.join(" ", words));
    }
}
