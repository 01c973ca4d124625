package batchwright.reference.find;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Ranks foods by how well they fit what was asked for, in any of its wordings. */
final class FoodFinder<T> {
    /** A food that has less of what was asked for does not fit; our choice. */
    private static final double LEAST = 0.3;

    private final Vocabulary vocabulary;
    private final List<IndexedFood<T>> foods;

    /**
     * A food that fits.
     *
     * @param score more is better
     * @param coverage 0 to 1: the share of what was asked for that it has
     * @param wording the one that it fits best
     * @param hasAll whether it has every word of that wording that says something
     */
    record Fitting<T>(T food, double score, double coverage, Query.Wording wording, boolean hasAll) {}

    FoodFinder(Vocabulary vocabulary, List<IndexedFood<T>> foods) {
        this.vocabulary = vocabulary;
        this.foods = foods;
    }

    /** Best first; foods that fit equally keep their order. */
    List<Fitting<T>> find(Collection<Query> wordings) {
        List<Fit> fits = wordings.stream()
                .filter(asked -> !asked.words().isEmpty())
                .map(asked -> new Fit(asked, vocabulary))
                .toList();
        var fitting = new ArrayList<Fitting<T>>();
        for (IndexedFood<T> food : foods) {
            fits.stream()
                    .flatMap(fit -> fitting(food, fit).stream())
                    .max(Comparator.comparingDouble(Fitting::score))
                    .ifPresent(fitting::add);
        }
        fitting.sort(Comparator.comparingDouble((Fitting<T> f) -> -f.score));
        return fitting;
    }

    private Optional<Fitting<T>> fitting(IndexedFood<T> food, Fit fit) {
        double coverage = fit.coverage(food);
        return coverage > LEAST
                ? Optional.of(new Fitting<>(food.food(), fit.score(food), coverage, fit.wording(), fit.hasAll(food)))
                : Optional.empty();
    }
}
