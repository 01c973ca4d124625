package batchwright.files.foods;

import batchwright.files.table.CsvTable;
import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Once;
import batchwright.files.value.Problems;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.text.SourceFile;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** foods/measures.csv: household measures. An empty snack_max: not offered as a snack. */
public final class MeasuresTable {
    private static final int MOST_LINES = 50_000;
    static final List<String> COLUMNS = List.of("food", "measure", "grams", "snack_max", "source");
    /** These may be left out. */
    static final String KIND = "snack_kind";

    static final String NAMED = "snack_named";

    private static final Pattern KINDS = Pattern.compile("[a-z][a-z_]{0,19}|");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9 _-]{0,39}");
    private static final NumberRange GRAMS = NumberRange.of("weight of one measure", "0.1", "5000", "g", "");
    private static final NumberRange SNACKS =
            NumberRange.of("snack_max", "1", "3", "", "leave it empty when it is no snack");

    private final FoodNames foods;
    private final Problems problems;
    private final Once once;
    private final MeasureNames names;

    private MeasuresTable(FoodNames foods, Problems problems) {
        this.foods = foods;
        this.problems = problems;
        this.once = new Once(problems);
        this.names = new MeasureNames(problems);
    }

    /** @param defined measures that come with the foods themselves; the table may not say them again */
    public static MeasureNames read(
            Optional<SourceFile> file, FoodNames foods, List<LabelsTable.Defined> defined, Problems problems) {
        var table = new MeasuresTable(foods, problems);
        Optional<List<TableRow>> rows =
                file.flatMap(f -> CsvTable.rows(f, MOST_LINES, COLUMNS, List.of(KIND, NAMED), problems));
        rows.ifPresentOrElse(all -> all.forEach(table::row), table.names::unknown);
        defined.stream().filter(d -> table.isNew(d.measure(), d.at())).forEach(d -> table.names.add(d.measure()));
        return table.names;
    }

    private void row(TableRow row) {
        Optional<Measure> measure = row.isSound() ? measure(row) : unsound(row);
        measure.ifPresentOrElse(
                names::add, () -> names.addBroken(row.cell("food").text()));
    }

    private Optional<Measure> unsound(TableRow row) {
        row.sure("food").ifPresent(foods::find);
        return Optional.empty();
    }

    private Optional<Measure> measure(TableRow row) {
        Optional<Food> food = row.need("food", "Enter a food of the catalogue").flatMap(foods::find);
        Optional<String> name =
                row.need("measure", "Enter a measure such as cup or medium").flatMap(this::name);
        Optional<BigDecimal> grams = row.decimal("grams", GRAMS);
        Optional<Integer> snacks = snacks(row.cell("snack_max"), problems);
        if (food.isPresent() && name.isPresent() && grams.isPresent() && snacks.isPresent()) {
            var measure = new Measure(
                    food.get(),
                    name.get(),
                    grams.get(),
                    snacks.get(),
                    row.cell("source").text(),
                    kind(row.cell(KIND)),
                    isOnlyNamed(row.cell(NAMED)));
            MeasureWeights.check(measure, row.cell("grams"), problems);
            return Optional.of(measure).filter(m -> isNew(m, row.cell("measure")));
        }
        return Optional.empty();
    }

    private String kind(Written written) {
        if (!KINDS.matcher(written.text()).matches()) {
            problems.error(
                    written,
                    written.quoted() + " cannot be a kind of snack",
                    "expected spread, carrier, or a word for what is alike, such as milk");
        }
        return written.text();
    }

    private boolean isOnlyNamed(Written written) {
        if (!written.isEmpty()
                && !written.text().equals("yes")
                && !written.text().equals("no")) {
            problems.error(written, written.quoted() + " must be yes or no", "expected yes, or leave it empty");
        }
        return written.text().equals("yes");
    }

    private boolean isNew(Measure measure, Written at) {
        return once.isNew(measure.name() + " of " + measure.food(), at);
    }

    private Optional<String> name(Written written) {
        if (NAME.matcher(written.text()).matches()) {
            return Optional.of(written.text());
        }
        problems.error(
                written, written.quoted() + " cannot be a measure", "expected small letters: cup, slice, medium");
        return Optional.empty();
    }

    /** Most in a day as a snack; an empty cell is none. */
    static Optional<Integer> snacks(Written cell, Problems problems) {
        return cell.isEmpty() ? Optional.of(0) : new Numbers(problems).whole(cell, SNACKS);
    }
}
