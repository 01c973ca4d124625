package batchwright.files.foods;

import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.Ids;
import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.origin.Origins;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** foods/labels.csv: own foods, copied from the labels of their packs. An empty figure is unknown, never zero. */
public final class LabelsTable {
    /** A measure that a label defines, and where. */
    record Defined(Measure measure, Written at) {}

    private static final int MOST_LINES = 10_000;
    private static final List<String> NEEDED = Stream.concat(
                    Stream.of("food", "name", "group"), LabelRow.NEEDED.stream())
            .toList();
    private static final List<String> OPTIONAL = Stream.concat(
                    LabelRow.OPTIONAL.stream(),
                    Stream.of("snack_max", "fruit_veg", "perishable", "refuse", "allergens", "origins", "note"))
            .toList();

    private final FoodNames names;
    private final FoodCells cells;
    private final Problems problems;
    private final List<Defined> measures = new ArrayList<>();

    private LabelsTable(FoodNames names, Problems problems) {
        this.names = names;
        this.cells = new FoodCells(problems);
        this.problems = problems;
    }

    /**
     * Adds the foods to those of the catalogue.
     *
     * @return the household measures that the labels define
     */
    public static List<Defined> read(Optional<SourceFile> file, FoodNames names, Problems problems) {
        var table = new LabelsTable(names, problems);
        file.ifPresent(f -> CsvTable.rows(f, MOST_LINES, NEEDED, OPTIONAL, problems)
                .ifPresentOrElse(rows -> rows.forEach(table::row), names::unknown));
        return table.measures;
    }

    private void row(TableRow row) {
        Optional<Food> food = row.isSound() ? food(row) : Optional.empty();
        food.ifPresentOrElse(names::add, () -> names.addBroken(row.cell("food")));
    }

    private Optional<Food> food(TableRow row) {
        int before = problems.errors();
        Optional<String> id =
                row.need("food", "Enter a short name such as protein_bar").flatMap(w -> Ids.id(w, problems));
        id.ifPresent(known -> names.isNew(known, row.cell("food")));
        Optional<Written> name = row.need("name", "Enter the name that a cook would say");
        String group = cells.group(row);
        Optional<Label> label = new LabelRow(row, problems).read();
        int beforeAllergens = problems.errors();
        Set<Allergen> allergens = cells.allergens(row.cell("allergens"));
        if (problems.errors() == beforeAllergens) {
            id.ifPresent(known -> checkAllergens(row, known, allergens));
        }
        Origins origins = cells.origins(row, allergens);
        boolean perishable = yes(row, "perishable");
        boolean fruitVeg = yes(row, "fruit_veg");
        BigDecimal refuse = row.cell("refuse").isEmpty()
                ? BigDecimal.ZERO
                : row.decimal("refuse", FoodCells.REFUSE).orElse(BigDecimal.ZERO);
        Optional<Integer> snacks = MeasuresTable.snacks(row.cell("snack_max"), problems);
        label.ifPresent(l -> refuseSnackWithoutMeasure(row, l));
        if (problems.errors() > before) {
            return Optional.empty();
        }
        var food = new Food(
                id.orElseThrow(),
                name.orElseThrow().text(),
                group,
                Optional.empty(),
                description(row, label.orElseThrow()),
                label.orElseThrow().per100g(fruitVeg),
                refuse,
                allergens,
                perishable,
                origins,
                Set.of());
        label.orElseThrow()
                .per()
                .measure()
                .ifPresent(m -> measures.add(new Defined(
                        new Measure(food, m.name(), m.grams(), snacks.orElse(0), "label"), row.cell("per"))));
        return Optional.of(food);
    }

    private void checkAllergens(TableRow row, String id, Set<Allergen> allergens) {
        List<String> words = List.of(row.cell("name").text(), row.cell("note").text());
        ObviousAllergens.check(id, words, allergens, row.cell("allergens"), problems);
    }

    /** An empty cell is no. */
    private boolean yes(TableRow row, String column) {
        return !row.cell(column).isEmpty() && row.yesNo(column);
    }

    private static String description(TableRow row, Label label) {
        String note = row.cell("note").text();
        return label.shown() + (note.isEmpty() ? "" : "; " + note);
    }

    private void refuseSnackWithoutMeasure(TableRow row, Label label) {
        if (!row.cell("snack_max").isEmpty() && label.per().measure().isEmpty()) {
            problems.error(
                    row.cell("snack_max"),
                    "snack_max needs a measure, and the figures are per "
                            + label.per().shown(),
                    "expected it empty here and a line in foods/measures.csv, or per such as 1 bar = 45 g");
        }
    }
}
