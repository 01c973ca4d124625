package batchwright.reference;

import batchwright.text.WordFit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds foods by words: each typed word has to fit a word of the description, in any order. */
public final class Sr28Search {
    private final Sr28 table;

    public Sr28Search(Sr28 table) {
        this.table = table;
    }

    /** Foods that fit one of the queries without a slip, best first; a query without words fits none. */
    public List<Sr28Food> exactly(List<List<String>> queries) {
        var ranked = new ArrayList<Rank>();
        for (List<String> words : queries) {
            List<Wanted> wanted = wanted(words);
            if (!wanted.isEmpty() && wanted.stream().noneMatch(w -> w.slip)) {
                ranked.addAll(ranked(wanted, candidates(wanted)));
            }
        }
        return inOrder(ranked);
    }

    /**
     * A slip is overlooked in a word that no description holds; only when nothing is found so, in every word. Best first; empty
     * when no word is asked for.
     */
    public List<Sr28Food> nearly(List<String> words) {
        List<Wanted> wanted = wanted(words);
        if (wanted.isEmpty()) {
            return List.of();
        }
        List<Sr28Food> found = inOrder(ranked(wanted, candidates(wanted)));
        if (found.isEmpty() && wanted.stream().anyMatch(w -> !w.slip)) {
            return inOrder(ranked(wanted.stream().map(Wanted::withSlip).toList(), table.foods()));
        }
        return found;
    }

    private List<Wanted> wanted(List<String> words) {
        return words.stream().map(w -> new Wanted(w, table)).toList();
    }

    /** Each food once, where it fits best. */
    private static List<Sr28Food> inOrder(List<Rank> ranked) {
        var once = new LinkedHashMap<String, Sr28Food>();
        ranked.stream()
                .sorted(Rank.BEST_FIRST)
                .forEach(r -> once.putIfAbsent(r.food().ndb(), r.food()));
        return List.copyOf(once.values());
    }

    /** The foods that hold the rarest of the words; all foods when every word has a slip. */
    private List<Sr28Food> candidates(List<Wanted> wanted) {
        return wanted.stream()
                .filter(w -> !w.slip)
                .map(w -> w.holding)
                .min(Comparator.comparingInt(List::size))
                .orElseGet(table::foods);
    }

    private static List<Rank> ranked(List<Wanted> wanted, List<Sr28Food> candidates) {
        var ranked = new ArrayList<Rank>();
        for (Sr28Food food : candidates) {
            List<String> has = food.words();
            int points = 0;
            for (Wanted word : wanted) {
                int best = word.best(has);
                points = best == WordFit.NONE || points == WordFit.NONE ? WordFit.NONE : points + best;
            }
            if (points < WordFit.NONE) {
                ranked.add(
                        new Rank(food, points, wanted.stream().map(w -> w.fit).toList()));
            }
        }
        return ranked;
    }

    /** A typed word, and where it can be found. */
    private static final class Wanted {
        private final WordFit fit;
        private final boolean slip;
        private final List<Sr28Food> holding;
        private final Map<String, Integer> known = new HashMap<>();

        Wanted(String word, Sr28 table) {
            this.fit = new WordFit(word);
            this.holding = table.holding(fit.stem());
            this.slip = holding.stream().allMatch(food -> fit.best(food.words(), false) == WordFit.NONE);
        }

        private Wanted(WordFit fit) {
            this.fit = fit;
            this.holding = List.of();
            this.slip = true;
        }

        Wanted withSlip() {
            return new Wanted(fit);
        }

        int best(List<String> words) {
            if (!slip) {
                return fit.best(words, false);
            }
            int best = WordFit.NONE;
            for (String word : words) {
                best = Math.min(best, known.computeIfAbsent(word, fit::pointsWithSlip));
            }
            return best;
        }
    }
}
