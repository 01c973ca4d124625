package batchwright.app;

import batchwright.food.Food;
import batchwright.text.WordFit;
import batchwright.text.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Where a food of the catalogue stands among those that fit: the better its words fit the earlier, then what is asked for before
 * what only holds it. Foods that stand alike keep the order of the catalogue.
 *
 * @param points how well the words fit, fewer are better
 * @param place how far the words are from what the food is, fewer are nearer
 */
record FoodRank(Food food, int points, int place) {
    private static final Comparator<FoodRank> BEST_FIRST =
            Comparator.comparingInt(FoodRank::points).thenComparingInt(FoodRank::place);

    /** Its name says nothing else: butter, salted. */
    private static final int ALONE = 0;
    /** It is the last word before a comma, or the group: rice in white rice, meat in bacon. */
    private static final int MAIN = 1;
    /** It says what kind of food: rice in rice noodles. */
    private static final int BESIDE = 2;
    /** It stands behind a comma, or only in the short name. */
    private static final int BEHIND = 3;

    /** Those that fit one of the queries, each once. */
    static List<Food> bestFirst(Collection<Food> foods, List<List<String>> queries, boolean overlookSlips) {
        List<List<WordFit>> wanted =
                queries.stream().map(q -> q.stream().map(WordFit::new).toList()).toList();
        var ranked = new ArrayList<FoodRank>();
        for (Food food : foods) {
            List<String> has = words(food);
            wanted.stream()
                    .map(query -> of(food, has, query, overlookSlips))
                    .min(BEST_FIRST)
                    .filter(rank -> rank.points < WordFit.NONE)
                    .ifPresent(ranked::add);
        }
        return ranked.stream().sorted(BEST_FIRST).map(FoodRank::food).toList();
    }

    /** What a food can be found by. */
    static List<String> words(Food food) {
        return Words.of(food.id() + " " + food.name() + " " + food.group());
    }

    private static FoodRank of(Food food, List<String> has, List<WordFit> query, boolean overlookSlips) {
        int points = 0;
        int place = 0;
        for (WordFit word : query) {
            points += word.best(has, overlookSlips);
            if (points >= WordFit.NONE) {
                return new FoodRank(food, WordFit.NONE, 0);
            }
            place += place(food, word);
        }
        return new FoodRank(food, points, place);
    }

    private static int place(Food food, WordFit word) {
        List<String> first = Words.of(food.name().split(",", 2)[0]);
        if (first.isEmpty()) {
            return BEHIND;
        }
        if (fits(word, first.subList(first.size() - 1, first.size()))) {
            return first.size() == 1 ? ALONE : MAIN;
        }
        if (fits(word, Words.of(food.group()))) {
            return MAIN;
        }
        return fits(word, first) ? BESIDE : BEHIND;
    }

    private static boolean fits(WordFit word, List<String> words) {
        return word.best(words, true) < WordFit.NONE;
    }
}
