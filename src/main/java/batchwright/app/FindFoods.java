package batchwright.app;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.text.NearestName;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/**
 * Foods by words: each word begins a word of the food's id, name or group; order and letter case do not matter. Only when no
 * food fits so, one slip in each word of five letters or more is overlooked.
 */
public final class FindFoods {
    private static final int LONG_WORD = 5;
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

    /** Foods in the order of the catalogue; all of them when there is no word. */
    public List<Food> matching(List<String> words) {
        List<String> wanted = words.stream().flatMap(FindFoods::words).toList();
        List<Food> found = matching(wanted, String::startsWith);
        return found.isEmpty() ? matching(wanted, FindFoods::nearlyStarts) : found;
    }

    /** The nearest id, for when nothing matches. */
    public Optional<String> nearest(List<String> words) {
        return NearestName.of(String.join("_", words), kitchen.foods().keySet());
    }

    private List<Food> matching(List<String> wanted, BiPredicate<String, String> fits) {
        return kitchen.foods().values().stream()
                .filter(food -> {
                    List<String> has = words(food.id() + " " + food.name() + " " + food.group())
                            .toList();
                    return wanted.stream().allMatch(w -> has.stream().anyMatch(h -> fits.test(h, w)));
                })
                .toList();
    }

    private static Stream<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}%]+", -1))
                .filter(w -> !w.isEmpty());
    }

    private static boolean nearlyStarts(String has, String wanted) {
        if (wanted.length() < LONG_WORD) {
            return has.startsWith(wanted);
        }
        // One slip may make the word one letter longer or shorter.
        return Stream.of(wanted.length() - 1, wanted.length(), wanted.length() + 1)
                .map(length -> has.substring(0, Math.min(length, has.length())))
                .anyMatch(start -> NearestName.slips(wanted, start) <= 1);
    }
}
