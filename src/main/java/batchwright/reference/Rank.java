package batchwright.reference;

import batchwright.text.WordFit;
import batchwright.text.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * Where a food stands among those that match: the better its words fit the earlier, then what is asked for before what only
 * holds it, then raw before prepared, then short before long descriptions.
 *
 * @param points how well the words fit, fewer are better
 * @param place of the first part of the description, between commas, that fits one of the words, and how
 *     nearly it says just that
 */
record Rank(Sr28Food food, int points, int place, boolean prepared) {
    static final Comparator<Rank> BEST_FIRST = Comparator.comparingInt(Rank::points)
            .thenComparingInt(Rank::place)
            .thenComparing(Rank::prepared)
            .thenComparingInt(rank -> rank.food.description().length())
            .thenComparing(rank -> rank.food.ndb());

    /** First parts of descriptions that only name a class: the food itself stands behind. */
    private static final Set<String> CLASSES = Set.of(
            "Nuts",
            "Seeds",
            "Spices",
            "Fish",
            "Crustaceans",
            "Mollusks",
            "Cereals",
            "Cheese",
            "Oil",
            "Beverages",
            "Game meat");

    private static final int NEARNESS = 3;
    private static final Set<String> RAW = Set.of("raw", "uncooked", "unprepared");

    Rank(Sr28Food food, int points, List<WordFit> wanted) {
        this(
                food,
                points,
                place(food.description(), wanted),
                food.words().stream().noneMatch(RAW::contains));
    }

    private static int place(String description, List<WordFit> wanted) {
        List<String> parts = List.of(description.split(",", -1));
        int first = CLASSES.contains(parts.get(0)) ? 1 : 0;
        for (int i = 0; i < parts.size(); i++) {
            List<String> words = Words.of(parts.get(i));
            if (fits(words, wanted)) {
                return NEARNESS * Math.max(0, i - first) + nearness(words, wanted);
            }
        }
        return NEARNESS * parts.size();
    }

    /** A part that says nothing else is nearest, one that only begins so comes next: sweet potato, sweet potato leaves. */
    private static int nearness(List<String> words, List<WordFit> wanted) {
        if (words.stream().allMatch(word -> fits(List.of(word), wanted))) {
            return 0;
        }
        return fits(words.subList(0, 1), wanted) ? 1 : 2;
    }

    private static boolean fits(List<String> words, List<WordFit> wanted) {
        return wanted.stream().anyMatch(w -> w.best(words, true) < WordFit.NONE);
    }
}
