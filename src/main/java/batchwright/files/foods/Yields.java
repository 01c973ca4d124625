package batchwright.files.foods;

import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** foods/yields.csv: cooked weight / raw edible weight by food and cooking method. */
public final class Yields {
    private static final int MOST_LINES = 50_000;
    static final List<String> COLUMNS = List.of("food", "method", "yield", "flag", "source");
    /** May be left out. */
    static final String DENSITY = "g_per_ml";

    private static final List<String> FLAGS = List.of("checked", "derived", "memory", "common practice");
    private static final Pattern METHOD = Pattern.compile("[a-z][a-z -]{0,39}");
    private static final NumberRange FACTOR = NumberRange.of(
            "yield", "0.1", "6", "", "it is cooked weight / raw weight, below 1 for meat, 2 to 3 for dry grains");

    private static final NumberRange GRAMS_PER_ML = NumberRange.of(
            "density", "0.1", "1.5", "g/ml", "of the cooked food as it lies in a box, 0.5 to 0.9 for what is loose");

    private final FoodNames foods;
    private final Problems problems;
    private final Once once;
    private final Map<Food, List<CookedYield>> byFood = new LinkedHashMap<>();
    private final Set<String> broken = new HashSet<>();
    private boolean complete = true;

    private Yields(FoodNames foods, Problems problems) {
        this.foods = foods;
        this.problems = problems;
        this.once = new Once(problems);
    }

    public static Yields read(Optional<SourceFile> file, FoodNames foods, Problems problems) {
        var yields = new Yields(foods, problems);
        Optional<List<TableRow>> rows =
                file.flatMap(f -> CsvTable.rows(f, MOST_LINES, COLUMNS, List.of(DENSITY), problems));
        rows.ifPresentOrElse(all -> all.forEach(yields::row), () -> yields.complete = false);
        return yields;
    }

    public Map<Food, List<CookedYield>> byFood() {
        return byFood;
    }

    /** How this food changes when cooked so; an unknown method is a problem unless the table itself has errors about it. */
    public Optional<CookedYield> find(Food food, Written method) {
        List<CookedYield> known = byFood.getOrDefault(food, List.of());
        Optional<CookedYield> found =
                known.stream().filter(y -> y.method().equals(method.text())).findFirst();
        if (found.isEmpty() && complete && !broken.contains(food.id())) {
            List<String> methods = known.stream().map(CookedYield::method).toList();
            String expected = methods.isEmpty()
                    ? "foods/yields.csv has no line for %s: add one, or leave the method out".formatted(food)
                    : "expected %s, or a new line in foods/yields.csv".formatted(String.join(" or ", methods));
            problems.unknown(method, "there is no yield for %s, %s".formatted(food, method.text()), expected, methods);
        }
        return found;
    }

    /** The method of this food that a text ends with, so that its comma was forgotten: 100 g boiled, 100 g,boiled. */
    public Optional<String> methodAtEnd(Food food, String text) {
        return byFood.getOrDefault(food, List.of()).stream()
                .map(CookedYield::method)
                .filter(method -> text.endsWith(" " + method) || text.endsWith("," + method))
                .max(Comparator.comparingInt(String::length));
    }

    private void row(TableRow row) {
        Optional<CookedYield> cooked = row.isSound() ? cooked(row) : unsound(row);
        cooked.ifPresentOrElse(
                y -> byFood.computeIfAbsent(y.food(), f -> new ArrayList<>()).add(y),
                () -> broken.add(row.cell("food").text()));
    }

    private Optional<CookedYield> unsound(TableRow row) {
        row.sure("food").ifPresent(foods::find);
        return Optional.empty();
    }

    private Optional<CookedYield> cooked(TableRow row) {
        int before = problems.errors();
        Optional<Food> food = row.need("food", "Enter a food of the catalogue").flatMap(foods::find);
        Optional<String> method =
                row.need("method", "Enter how it is cooked: boiled, roasted").flatMap(this::method);
        Optional<BigDecimal> factor = row.decimal("yield", FACTOR);
        Optional<BigDecimal> density =
                row.cell(DENSITY).isEmpty() ? Optional.empty() : row.decimal(DENSITY, GRAMS_PER_ML);
        Optional<Written> flag = row.need("flag", "Enter one of " + String.join(", ", FLAGS));
        flag.filter(f -> !FLAGS.contains(f.text()))
                .ifPresent(f -> problems.unknown(
                        f,
                        "there is no flag called " + f.quoted(),
                        "expected one of " + String.join(", ", FLAGS),
                        FLAGS));
        if (problems.errors() > before || food.isEmpty()) {
            return Optional.empty();
        }
        var cooked = new CookedYield(
                food.get(),
                method.orElseThrow(),
                factor.orElseThrow(),
                flag.orElseThrow().text(),
                row.cell("source").text(),
                density);
        boolean isNew = once.isNew(cooked.food() + " " + cooked.method(), row.cell("method"));
        return isNew ? Optional.of(cooked) : Optional.empty();
    }

    private Optional<String> method(Written written) {
        if (METHOD.matcher(written.text()).matches()) {
            return Optional.of(written.text());
        }
        problems.error(
                written, written.quoted() + " cannot be a method", "expected one or two words: boiled, slow cooked");
        return Optional.empty();
    }
}
