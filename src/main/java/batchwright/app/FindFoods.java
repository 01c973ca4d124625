package batchwright.app;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Search;
import batchwright.text.NearestName;
import batchwright.text.WordFit;
import batchwright.text.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Foods by words: each word begins a word of the food's id, name or group, is its singular or plural, or, when no food fits so, is
 * one slip away from it; order and letter case do not matter. In the user's catalogue, then in USDA SR28.
 */
public final class FindFoods {
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

    /** Foods of the catalogue, in its order; all of them when there is no word. */
    public List<Food> matching(List<String> words) {
        List<WordFit> wanted = wanted(words).stream().map(WordFit::new).toList();
        List<Food> found = matching(wanted, false);
        return found.isEmpty() ? matching(wanted, true) : found;
    }

    private List<Food> matching(List<WordFit> wanted, boolean overlookSlips) {
        return kitchen.foods().values().stream()
                .filter(food -> {
                    List<String> has = words(food);
                    return wanted.stream().allMatch(w -> w.best(has, overlookSlips) < WordFit.NONE);
                })
                .toList();
    }

    /** Foods of USDA SR28, best first; none when there is no word. */
    public List<Sr28Food> inReference(Sr28 table, List<String> words) {
        return new Sr28Search(table).matching(wanted(words));
    }

    /** For when nothing matches: known words near those that no food holds. */
    public List<String> nearestWords(Sr28 table, List<String> words) {
        Set<String> known = table.words();
        kitchen.foods().values().forEach(food -> known.addAll(words(food)));
        return wanted(words).stream()
                .filter(word -> !known.contains(word))
                .flatMap(word -> NearestName.of(word, known).stream())
                .distinct()
                .toList();
    }

    private static List<String> wanted(List<String> words) {
        return Words.of(String.join(" ", words));
    }

    private static List<String> words(Food food) {
        return Words.of(food.id() + " " + food.name() + " " + food.group());
    }
}
