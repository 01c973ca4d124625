package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.MeasureName;
import batchwright.text.Written;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Finds a food's household measures by name, in the singular or the plural: cup, cups, cups of penne; tablespoon, tbs and teaspoon
 * stand for tbsp and tsp; capital letters count as small ones. A food with an error in its lines is not complained about again wherever it is used.
 */
public final class MeasureNames {
    private final Problems problems;
    private final Map<Food, List<Measure>> byFood = new LinkedHashMap<>();
    private final Set<String> broken = new HashSet<>();
    private boolean complete = true;

    public MeasureNames(Problems problems) {
        this.problems = problems;
    }

    public static MeasureNames of(Kitchen kitchen, Problems problems) {
        var names = new MeasureNames(problems);
        kitchen.measures().values().forEach(measures -> measures.forEach(names::add));
        return names;
    }

    public void add(Measure measure) {
        byFood.computeIfAbsent(measure.food(), f -> new ArrayList<>()).add(measure);
    }

    public void addBroken(String food) {
        broken.add(food);
    }

    /** The table could not be read: no measure can be called unknown. */
    void unknown() {
        complete = false;
    }

    public Map<Food, List<Measure>> byFood() {
        return Collections.unmodifiableMap(byFood);
    }

    /** @param others what else could stand in its place, such as g; for the message */
    public Optional<Measure> find(Food food, Written written, List<String> others) {
        List<Measure> known = byFood.getOrDefault(food, List.of());
        var name = new Written(abbreviated(written.text()), written.at());
        Optional<Measure> found =
                known.stream().filter(m -> isNamed(m.name(), name.text())).findFirst();
        if (found.isEmpty() && complete && !broken.contains(food.id())) {
            List<String> names = known.stream().map(Measure::name).toList();
            problems.unknown(
                    name,
                    "there is no measure of %s called %s".formatted(food, written.quoted()),
                    expected(food, names, others),
                    writtenOut(names));
        }
        return found;
    }

    private static boolean isNamed(String name, String written) {
        return name.equals(written) || MeasureName.plural(name).equals(written);
    }

    private static String abbreviated(String written) {
        return written.toLowerCase(Locale.ROOT)
                .replaceFirst("^(tablespoons?|tbsps|tbs|tbl)\\b", "tbsp")
                .replaceFirst("^(teaspoons?|tsps)\\b", "tsp");
    }

    /** For the nearest name: also as many, and spoons in full. */
    private static List<String> writtenOut(List<String> names) {
        return names.stream()
                .flatMap(name -> Stream.of(
                        name,
                        MeasureName.plural(name),
                        name.replaceFirst("^tbsp\\b", "tablespoons").replaceFirst("^tsp\\b", "teaspoons")))
                .toList();
    }

    private static String expected(Food food, List<String> names, List<String> others) {
        if (names.isEmpty()) {
            String none = "foods/measures.csv has no line for %s".formatted(food);
            return others.isEmpty() ? none + ": add one" : "expected " + String.join(" or ", others) + ": " + none;
        }
        List<String> all = Stream.concat(others.stream(), names.stream()).toList();
        String before = String.join(", ", all.subList(0, all.size() - 1));
        return "expected " + (before.isEmpty() ? "" : before + " or ") + all.get(all.size() - 1);
    }
}
