package batchwright.files;

import batchwright.food.Food;
import batchwright.text.SourceFile;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** profiles/pantry.csv: what is at home, in grams as purchased. */
final class PantryTable {
    static final List<String> COLUMNS = List.of("food", "grams", "note");
    private static final Range GRAMS = Range.of("weight at home", "0", "100000", "g", "");

    private PantryTable() {}

    static Map<Food, BigDecimal> read(Optional<SourceFile> file, FoodNames foods, Problems problems) {
        var pantry = new LinkedHashMap<Food, BigDecimal>();
        var once = new Once(problems);
        file.flatMap(f -> CsvTable.rows(f, COLUMNS, problems)).stream()
                .flatMap(List::stream)
                .filter(Row::isSound)
                .forEach(row -> {
                    Optional<Food> food =
                            row.need("food", "Enter a food of the catalogue").flatMap(foods::find);
                    Optional<BigDecimal> grams = row.decimal("grams", GRAMS);
                    food.filter(f -> once.isNew(f.id(), row.cell("food")))
                            .ifPresent(f -> grams.ifPresent(g -> pantry.put(f, g)));
                });
        return pantry;
    }
}
