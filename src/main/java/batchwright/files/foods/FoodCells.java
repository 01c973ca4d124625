package batchwright.files.foods;

import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.food.TakenOff;
import batchwright.food.origin.OriginList;
import batchwright.food.origin.Origins;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Cells that every table of foods has: the group, the allergens, the origins, what is taken off. */
public final class FoodCells {
    static final List<String> GROUPS = List.of(
            "grain",
            "legume",
            "meat",
            "fish",
            "egg",
            "dairy",
            "vegetable",
            "starchy_vegetable",
            "fruit",
            "dried_fruit",
            "nut_seed",
            "fat_oil",
            "sweet",
            "protein_powder",
            "sauce",
            "other");
    /** The most in USDA SR28 is 81 (a fish sold whole). */
    static final NumberRange REFUSE = NumberRange.of("refuse", "0", "95", "%", "the rest is what can be eaten");

    private static final List<String> TAKEN_OFF =
            Stream.of(TakenOff.values()).map(TakenOff::id).toList();
    private static final Pattern WORD = Pattern.compile("\\S+");

    private final Problems problems;

    public FoodCells(Problems problems) {
        this.problems = problems;
    }

    String group(TableRow row) {
        Optional<Written> group = row.need("group", "Enter one of " + String.join(", ", GROUPS));
        group.filter(g -> !GROUPS.contains(g.text()))
                .ifPresent(g -> problems.unknown(
                        g,
                        "there is no group called " + g.quoted(),
                        "expected one of " + String.join(", ", GROUPS),
                        GROUPS));
        return group.map(Written::text).orElse("");
    }

    Set<Allergen> allergens(Written cell) {
        var allergens = EnumSet.noneOf(Allergen.class);
        WORD.matcher(cell.text())
                .results()
                .forEach(word -> Allergen.byId(word.group())
                        .ifPresentOrElse(allergens::add, () -> unknownAllergen(word, cell.at())));
        return allergens;
    }

    /** Of the row's cell origins; unknown when that is empty or wrong. */
    Origins origins(TableRow row, Set<Allergen> allergens) {
        Written cell = row.cell("origins");
        WORD.matcher(cell.text())
                .results()
                .filter(word -> !OriginList.words().contains(OriginList.plain(word.group())))
                .forEach(word -> unknown("origin", word, cell.at(), OriginList.words()));
        Origins origins = OriginList.of(cell.text()).orElse(Origins.UNKNOWN);
        if (origins.known()) {
            new ImpliedOrigins(origins, allergens).check(cell, problems);
        }
        return origins;
    }

    /** What the refuse is. */
    Set<TakenOff> takenOff(Written cell, BigDecimal refuse) {
        Set<TakenOff> takenOff = takenOff(cell);
        if (!takenOff.isEmpty() && refuse.signum() == 0) {
            problems.error(
                    cell,
                    "%s is taken off, but no refuse is counted".formatted(cell.text()),
                    "expected the share that it is of the weight as bought, or an empty cell here");
        }
        return takenOff;
    }

    /** The kinds of it that a cell names, blanks between. */
    public Set<TakenOff> takenOff(Written cell) {
        var takenOff = EnumSet.noneOf(TakenOff.class);
        WORD.matcher(cell.text())
                .results()
                .forEach(word -> TakenOff.byId(word.group())
                        .ifPresentOrElse(takenOff::add, () -> unknown("part of a food", word, cell.at(), TAKEN_OFF)));
        return takenOff;
    }

    private void unknownAllergen(MatchResult word, Span cell) {
        unknown(
                "allergen",
                word,
                cell,
                Stream.of(Allergen.values()).map(Allergen::id).toList());
    }

    private void unknown(String what, MatchResult word, Span cell, List<String> all) {
        Span place = cell.file().span(cell.line(), cell.column() + word.start(), word.end() - word.start());
        var wrong = new Written(word.group(), place);
        problems.unknown(
                wrong,
                "there is no " + what + " called " + wrong.quoted(),
                "expected, separated by spaces: " + String.join(" ", all),
                all);
    }
}
