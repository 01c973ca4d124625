package batchwright.files.shop;

import batchwright.files.foods.FoodNames;
import batchwright.files.foods.MeasureNames;
import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.DateGrammar;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Lot;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** profiles/pantry.csv: what is at home; a line for each lot of a food, with its use-by date if it has one. */
public final class PantryTable {
    private static final int MOST_LINES = 10_000;
    static final List<String> COLUMNS = List.of("food", "grams", "note");
    static final List<String> OPTIONAL = List.of("use_by");

    private final FoodNames foods;
    private final PantryAmount amounts;
    private final Problems problems;
    private final Once once;
    private final Map<Food, List<Lot>> lots = new LinkedHashMap<>();

    private PantryTable(FoodNames foods, MeasureNames measures, Problems problems) {
        this.foods = foods;
        this.amounts = new PantryAmount(measures, problems);
        this.problems = problems;
        this.once = new Once(problems);
    }

    public static Map<Food, List<Lot>> read(
            Optional<SourceFile> file, FoodNames foods, MeasureNames measures, Problems problems) {
        var table = new PantryTable(foods, measures, problems);
        file.flatMap(f -> CsvTable.rows(f, MOST_LINES, COLUMNS, OPTIONAL, problems)).stream()
                .flatMap(List::stream)
                .forEach(table::row);
        return table.lots;
    }

    private void row(TableRow row) {
        if (!row.isSound()) {
            row.sure("food").ifPresent(foods::find);
            return;
        }
        PantryNote.check(row, problems);
        int before = problems.errors();
        Optional<Food> food = row.need("food", "Enter a food of the catalogue").flatMap(foods::find);
        Optional<BigDecimal> grams = row.need("grams", "Enter the weight at home, in g, or such as 3 medium")
                .flatMap(cell -> amounts.asPurchased(food, cell));
        Written date = row.cell("use_by");
        Optional<LocalDate> useBy = date.isEmpty() ? Optional.empty() : new DateGrammar(problems).read(date);
        boolean known = food.isPresent() && grams.isPresent(); // else it was told, here or in the table of measures
        if (problems.errors() == before && known && once.isNew(named(food.get(), useBy), row.cell("food"))) {
            lots.computeIfAbsent(food.get(), f -> new ArrayList<>()).add(new Lot(grams.orElseThrow(), useBy));
        }
    }

    private static String named(Food food, Optional<LocalDate> useBy) {
        return useBy.map(day -> food.id() + " to be used by " + day).orElse(food.id());
    }
}
