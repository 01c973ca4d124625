package batchwright.files.foods;

import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.Ids;
import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.TakenOff;
import batchwright.food.origin.Origins;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * foods/catalogue.csv: one food a line, nutrients per 100 g edible. A nutrient whose cell or column is not there is unknown, never
 * zero.
 */
public final class CatalogueTable {
    private static final Set<Nutrient> REQUIRED =
            EnumSet.of(Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.CARBOHYDRATE);
    private static final int MOST_LINES = 10_000;
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    private final Problems problems;
    private final FoodNames names;
    private final FoodCells cells;

    private CatalogueTable(Problems problems) {
        this.problems = problems;
        this.names = new FoodNames(problems);
        this.cells = new FoodCells(problems);
    }

    /** In their usual order. */
    public static List<String> columns() {
        var columns = new ArrayList<>(List.of("food", "name", "group", "usda_ndb", "usda_description"));
        Nutrient.columns().forEach(n -> columns.add(n.tagname()));
        columns.addAll(
                List.of("REFUSE", "refuse_as_sold", "fruit_veg", "perishable", "allergens", "origins", "taken_off"));
        return columns;
    }

    /** What may be left out of the table is not known of any food in it. */
    private static List<String> optional() {
        return Stream.concat(
                        Nutrient.columns().stream()
                                .filter(n -> !REQUIRED.contains(n))
                                .map(Nutrient::tagname),
                        Stream.of("refuse_as_sold", "origins", "taken_off"))
                .toList();
    }

    private static List<String> needed() {
        return columns().stream().filter(c -> !optional().contains(c)).toList();
    }

    public static FoodNames read(Optional<SourceFile> file, Problems problems) {
        var table = new CatalogueTable(problems);
        Optional<List<TableRow>> rows = file.flatMap(f -> CsvTable.rows(f, MOST_LINES, needed(), optional(), problems));
        rows.ifPresentOrElse(all -> all.forEach(table::row), table.names::unknown);
        return table.names;
    }

    private void row(TableRow row) {
        int before = problems.errors();
        Written id = row.cell("food");
        if (row.isSound()) {
            Optional<Food> food = food(row);
            if (problems.errors() == before && food.isPresent()) {
                names.add(food.get());
                return;
            }
        }
        names.addBroken(id);
    }

    private Optional<Food> food(TableRow row) {
        Optional<String> id =
                row.need("food", "Enter a short name such as rolled_oats").flatMap(w -> Ids.id(w, problems));
        id.ifPresent(known -> names.isNew(known, row.cell("food")));
        Optional<String> name =
                row.need("name", "Enter the name that a cook would say").map(Written::text);
        String group = cells.group(row);
        Map<Nutrient, BigDecimal> nutrients = nutrients(row);
        new Plausible(Figures.per100g(nutrients), nutrient -> row.cell(nutrient.tagname()), problems).check();
        new Proximates(row, nutrients, problems).check();
        int beforeAllergens = problems.errors();
        Set<Allergen> allergens = cells.allergens(row.cell("allergens"));
        if (problems.errors() == beforeAllergens) {
            id.ifPresent(known -> checkAllergens(row, known, allergens));
        }
        boolean perishable = row.yesNo("perishable");
        BigDecimal refuse = refuse(row);
        Origins origins = cells.origins(row, allergens);
        Set<TakenOff> takenOff = cells.takenOff(row.cell("taken_off"), refuse);
        Written ndb = row.cell("usda_ndb");
        return id.flatMap(i -> name.map(n -> new Food(
                i,
                n,
                group,
                Optional.of(ndb.text()).filter(text -> !text.isEmpty()),
                row.cell("usda_description").text(),
                Nutrients.of(nutrients),
                refuse,
                allergens,
                perishable,
                origins,
                takenOff)));
    }

    private void checkAllergens(TableRow row, String id, Set<Allergen> allergens) {
        List<String> words =
                List.of(row.cell("name").text(), row.cell("usda_description").text());
        ObviousAllergens.check(id, words, allergens, row.cell("allergens"), problems);
    }

    private Map<Nutrient, BigDecimal> nutrients(TableRow row) {
        var values = new EnumMap<Nutrient, BigDecimal>(Nutrient.class);
        for (Nutrient nutrient : Nutrient.columns()) {
            if (REQUIRED.contains(nutrient) || !row.cell(nutrient.tagname()).isEmpty()) {
                row.decimal(nutrient.tagname(), Plausible.range(nutrient)).ifPresent(v -> values.put(nutrient, v));
            }
        }
        values.put(Nutrient.FRUIT_VEG, row.yesNo("fruit_veg") ? ALL : BigDecimal.ZERO);
        return values;
    }

    /** How much of the weight as bought is thrown away; refuse_as_sold, where it is given, replaces the source's figure. */
    private BigDecimal refuse(TableRow row) {
        String column = row.cell("refuse_as_sold").isEmpty() ? "REFUSE" : "refuse_as_sold";
        return row.decimal(
                        column,
                        FoodCells.REFUSE,
                        "Enter the share that is thrown away, in %; 0 when all of it is eaten")
                .orElse(BigDecimal.ZERO);
    }
}
