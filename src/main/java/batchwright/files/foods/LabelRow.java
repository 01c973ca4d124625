package batchwright.files.foods;

import static java.util.Map.entry;

import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.food.Nutrient;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The cells of a row that are copied from the label. */
final class LabelRow {
    static final List<String> NEEDED = List.of("label", "per", "energy", "fat_g", "carbohydrate_g", "protein_g");

    /** In the order of a European label. */
    private static final Map<Nutrient, String> MACROS = new EnumMap<>(Map.ofEntries(
            entry(Nutrient.ENERGY, "energy"),
            entry(Nutrient.FAT, "fat_g"),
            entry(Nutrient.SATURATED_FAT, "saturated_g"),
            entry(Nutrient.CARBOHYDRATE, "carbohydrate_g"),
            entry(Nutrient.SUGAR, "sugar_g"),
            entry(Nutrient.FIBRE, "fibre_g"),
            entry(Nutrient.PROTEIN, "protein_g"),
            entry(Nutrient.SODIUM, "salt_or_sodium")));

    private static final String POLYOLS = "polyols_g";
    private static final Map<Nutrient, String> COLUMNS = columns();
    /** What may be left out of the table is not known of any food in it. */
    static final List<String> OPTIONAL = Stream.concat(
                    COLUMNS.values().stream().filter(column -> !NEEDED.contains(column)), Stream.of(POLYOLS))
            .toList();

    /** Every label states them, and no plan can do without. */
    private static final Set<Nutrient> REQUIRED = Set.of(Nutrient.FAT, Nutrient.CARBOHYDRATE, Nutrient.PROTEIN);

    private final TableRow row;
    private final Problems problems;

    LabelRow(TableRow row, Problems problems) {
        this.row = row;
        this.problems = problems;
    }

    /** Those of a label's table, and every mineral and vitamin as calcium_mg, vitamin_d_ug. */
    private static Map<Nutrient, String> columns() {
        var columns = new EnumMap<>(MACROS);
        Nutrient.columns().stream()
                .filter(n -> n.unit().equals("mg") || n.unit().equals("ug"))
                .filter(n -> !n.label().contains(","))
                .forEach(n -> columns.putIfAbsent(
                        n, (n.label() + "_" + n.unit()).replace(' ', '_').toLowerCase(Locale.ROOT)));
        return columns;
    }

    /** The label, unless some figure of it is missing or cannot be. */
    Optional<Label> read() {
        int before = problems.errors();
        Optional<LabelKind> kind = row.need("label", "Enter eu or us, by whose rules the label is")
                .flatMap(w -> LabelKind.read(w, problems));
        Optional<Per> per = row.need("per", "Enter what the figures are for: 100 g, 1 bar = 45 g")
                .flatMap(new PerGrammar(problems)::read);
        Optional<LabelEnergy> energy =
                row.need("energy", "Enter the energy: 1550 kJ or 370 kcal").flatMap(new EnergyGrammar(problems)::read);
        Map<Nutrient, LabelAmount> amounts = amounts();
        BigDecimal polyols = polyols();
        if (problems.errors() > before) {
            return Optional.empty();
        }
        var label = new Label(kind.orElseThrow(), per.orElseThrow(), energy.orElseThrow(), amounts, polyols);
        new Plausible(label.figures(), this::cell, problems).checkLabel();
        refuseMoreSaltThanFood(label);
        if (problems.errors() > before) {
            return Optional.empty();
        }
        new SaltDoubts(label, row.cell("group").text(), cell(Nutrient.SODIUM), problems).check();
        new LabelEnergyCheck(label, cell(Nutrient.ENERGY), problems).check();
        return problems.errors() > before ? Optional.empty() : Optional.of(label);
    }

    private Written cell(Nutrient nutrient) {
        return row.cell(COLUMNS.getOrDefault(nutrient, ""));
    }

    private Map<Nutrient, LabelAmount> amounts() {
        var amounts = new EnumMap<Nutrient, LabelAmount>(Nutrient.class);
        COLUMNS.forEach((nutrient, column) -> {
            if (nutrient != Nutrient.ENERGY) {
                amount(nutrient, column).ifPresent(amount -> amounts.put(nutrient, amount));
            }
        });
        return amounts;
    }

    private Optional<LabelAmount> amount(Nutrient nutrient, String column) {
        Written cell = row.cell(column);
        if (cell.isEmpty()) {
            return REQUIRED.contains(nutrient)
                    ? row.need(column, "Enter the %s of the label, in %s".formatted(nutrient.label(), nutrient.unit()))
                            .map(w -> new LabelAmount(BigDecimal.ZERO, true))
                    : Optional.empty();
        }
        return nutrient == Nutrient.SODIUM
                ? new SaltGrammar(problems).read(cell)
                : LabelAmount.read(cell, range(nutrient.label(), nutrient.unit()), problems);
    }

    private BigDecimal polyols() {
        Written cell = row.cell(POLYOLS);
        return cell.isEmpty()
                ? BigDecimal.ZERO
                : LabelAmount.read(cell, range("polyols", "g"), problems)
                        .map(LabelAmount::amount)
                        .orElse(BigDecimal.ZERO);
    }

    /** Only wide enough that no slip passes as a figure of 5 kg of food; weights are compared with each other later. */
    private static NumberRange range(String what, String unit) {
        return NumberRange.of(what, "0", unit.equals("g") ? "5000" : "100000", unit, "");
    }

    private void refuseMoreSaltThanFood(Label label) {
        BigDecimal mostMg = label.per().grams().multiply(BigDecimal.valueOf(400));
        Stream.ofNullable(label.amounts().get(Nutrient.SODIUM))
                .filter(sodium -> sodium.amount().compareTo(mostMg) > 0)
                .forEach(sodium -> problems.error(
                        cell(Nutrient.SODIUM),
                        "%s is more salt than the food weighs"
                                .formatted(cell(Nutrient.SODIUM).quoted()),
                        "expected at most %s g salt: is it mg instead of g?"
                                .formatted(label.per().grams().toPlainString())));
    }
}
