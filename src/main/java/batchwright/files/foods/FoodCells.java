package batchwright.files.foods;

import batchwright.files.table.TableRow;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.food.Allergen;
import batchwright.text.Span;
import batchwright.text.Written;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Cells that every table of foods has: the group and the allergens. */
final class FoodCells {
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

    private static final Pattern WORD = Pattern.compile("\\S+");

    private final Problems problems;

    FoodCells(Problems problems) {
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

    private void unknownAllergen(MatchResult word, Span cell) {
        List<String> all = Stream.of(Allergen.values()).map(Allergen::id).toList();
        Span place = cell.file().span(cell.line(), cell.column() + word.start(), word.end() - word.start());
        var wrong = new Written(word.group(), place);
        problems.unknown(
                wrong,
                "there is no allergen called " + wrong.quoted(),
                "expected, separated by spaces: " + String.join(" ", all),
                all);
    }
}
