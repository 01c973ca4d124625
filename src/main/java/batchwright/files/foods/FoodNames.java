package batchwright.files.foods;

import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.OtherNames;
import batchwright.text.Problem;
import batchwright.text.Words;
import batchwright.text.Written;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds foods by their id. A food whose row has an error is known by name but has no value: the error was already reported, and
 * is not repeated wherever the food is used.
 */
public final class FoodNames {
    private final Problems problems;
    private final Once once;
    private final Map<String, Food> foods = new LinkedHashMap<>();
    private final Set<String> names = new HashSet<>();
    private boolean complete = true;

    FoodNames(Problems problems) {
        this.problems = problems;
        this.once = new Once(problems);
    }

    /** Makes sure that an id stands only once in all tables of foods. */
    boolean isNew(String id, Written written) {
        return once.isNew(id, written);
    }

    void add(Food food) {
        names.add(food.id());
        foods.put(food.id(), food);
    }

    /** Also as it was probably meant: Rolled-Oats is known as rolled_oats. */
    void addBroken(Written id) {
        names.add(id.text());
        names.add(id.text().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_'));
    }

    /** A table of foods could not be read: no name can be called unknown. */
    public void unknown() {
        complete = false;
    }

    public Map<String, Food> foods() {
        return Collections.unmodifiableMap(foods);
    }

    public Optional<Food> find(Written name) {
        if (complete && !names.contains(name.text())) {
            String wrong = "there is no food called " + name.quoted();
            String expected = "expected a food named in foods/catalogue.csv or foods/labels.csv";
            Optional<String> ours = byOtherName(name.text());
            if (ours.isPresent()) {
                problems.add(Problem.error(name.at(), wrong, expected).near(ours));
            } else {
                problems.unknown(name, wrong, expected, names);
            }
        }
        return Optional.ofNullable(foods.get(name.text()));
    }

    /** The shortest short name that has our words for what was written: eggplant for aubergine. */
    private Optional<String> byOtherName(String written) {
        return OtherNames.replacedIn(Words.of(written)).stream()
                .flatMap(ours -> foods.keySet().stream().filter(id -> hasAll(Words.of(id), ours)))
                .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
    }

    private static boolean hasAll(List<String> words, List<String> ours) {
        return ours.stream().allMatch(our -> words.stream().anyMatch(word -> Words.areOne(word, our)));
    }
}
