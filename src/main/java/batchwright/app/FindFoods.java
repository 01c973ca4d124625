package batchwright.app;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.reference.Sr28;
import batchwright.reference.find.FoodSearch;
import batchwright.reference.find.FoundFoods;
import batchwright.text.NearestName;
import batchwright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Foods by words: {@link FoodSearch} in the user's catalogue and in USDA SR28. */
public final class FindFoods {
    private static final int LETTERS_PER_SLIP = 3;

    private final Kitchen kitchen;

    public FindFoods(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** The food with exactly this id. */
    public Optional<Food> exactly(List<String> words) {
        return words.size() == 1
                ? Optional.ofNullable(kitchen.foods().get(words.get(0).toLowerCase(Locale.ROOT)))
                : Optional.empty();
    }

    /** In both tables; nothing when there is no word. */
    public FoundFoods found(Sr28 table, List<String> words) {
        return in(table).find(String.join(" ", words));
    }

    /** Foods of the catalogue that have all words, best first; all of them in its order when there is no word. */
    public List<Food> matching(List<String> words) {
        return wanted(words).isEmpty() ? List.copyOf(kitchen.foods().values()) : matching(inCatalogue(), words);
    }

    /** Foods of the catalogue that fit any of the words, those of the first word first. */
    public List<Food> matchingAny(List<String> words) {
        FoodSearch search = inCatalogue();
        return wanted(words).stream()
                .flatMap(word -> matching(search, List.of(word)).stream())
                .distinct()
                .toList();
    }

    private static List<Food> matching(FoodSearch search, List<String> words) {
        FoundFoods found = search.find(String.join(" ", words));
        return found.match() == FoundFoods.Match.ALL ? found.yours() : List.of();
    }

    /** For when nothing matches: known words near those that no food holds. */
    public List<String> nearestWords(Sr28 table, List<String> words) {
        Set<String> known = in(table).words();
        return wanted(words).stream()
                .filter(word -> !known.contains(word))
                .flatMap(word -> nearest(word, known).stream())
                .distinct()
                .toList();
    }

    /** Slips were overlooked already; with more, only a long word that begins alike is no guess. */
    private static Optional<String> nearest(String word, Set<String> known) {
        List<String> alike =
                known.stream().filter(k -> k.charAt(0) == word.charAt(0)).toList();
        return NearestName.of(word, alike)
                .filter(near -> near.contains(word)
                        || NearestName.slips(word, near) <= Math.max(1, word.length() / LETTERS_PER_SLIP));
    }

    private FoodSearch in(Sr28 table) {
        return FoodSearch.in(kitchen.foods().values(), table);
    }

    private FoodSearch inCatalogue() {
        return new FoodSearch(kitchen.foods().values(), List.of());
    }

    private static List<String> wanted(List<String> words) {
        return Words.of(String.join(" ", words));
    }
}
