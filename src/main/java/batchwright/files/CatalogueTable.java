package batchwright.files;

import batchwright.food.Allergen;
import batchwright.food.Food;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.text.SourceFile;
import batchwright.text.Span;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** foods/catalogue.csv: one food a line, nutrients per 100 g edible. An empty nutrient is unknown, never zero. */
final class CatalogueTable {
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
    private static final Set<Nutrient> REQUIRED =
            EnumSet.of(Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.CARBOHYDRATE);
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final BigDecimal ALL = BigDecimal.valueOf(100);
    /** The most in USDA SR28 is 81 (a fish sold whole). */
    private static final Range REFUSE = Range.of("refuse", "0", "95", "%", "the rest is what can be eaten");

    private final Problems problems;
    private final FoodNames names;
    private final Once once;

    private CatalogueTable(Problems problems) {
        this.problems = problems;
        this.names = new FoodNames(problems);
        this.once = new Once(problems);
    }

    static List<String> columns() {
        var columns = new ArrayList<>(List.of("food", "name", "group", "usda_ndb", "usda_description"));
        Nutrient.columns().forEach(n -> columns.add(n.tagname()));
        columns.addAll(List.of("REFUSE", "refuse_as_sold", "fruit_veg", "perishable", "allergens"));
        return columns;
    }

    static FoodNames read(Optional<SourceFile> file, Problems problems) {
        var table = new CatalogueTable(problems);
        Optional<List<Row>> rows = file.flatMap(f -> CsvTable.rows(f, columns(), problems));
        rows.ifPresentOrElse(all -> all.forEach(table::row), table.names::unknown);
        return table.names;
    }

    private void row(Row row) {
        int before = problems.errors();
        Written id = row.cell("food");
        if (row.isSound()) {
            Optional<Food> food = food(row);
            if (problems.errors() == before && food.isPresent()) {
                names.add(food.get());
                return;
            }
        }
        names.addBroken(id.text());
        names.addBroken(id.text().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_'));
    }

    private Optional<Food> food(Row row) {
        Optional<String> id =
                row.need("food", "Enter a short name such as rolled_oats").flatMap(w -> Ids.id(w, problems));
        id.ifPresent(known -> once.isNew(known, row.cell("food")));
        Optional<String> name =
                row.need("name", "Enter the name that a cook would say").map(Written::text);
        String group = group(row);
        Map<Nutrient, BigDecimal> nutrients = nutrients(row);
        new Plausible(row, nutrients, problems).check();
        Set<Allergen> allergens = allergens(row.cell("allergens"));
        boolean perishable = row.yesNo("perishable");
        BigDecimal refuse = refuse(row);
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
                perishable)));
    }

    private String group(Row row) {
        Optional<Written> group = row.need("group", "Enter one of " + String.join(", ", GROUPS));
        group.filter(g -> !GROUPS.contains(g.text()))
                .ifPresent(g -> problems.unknown(
                        g,
                        "there is no group called " + g.quoted(),
                        "expected one of " + String.join(", ", GROUPS),
                        GROUPS));
        return group.map(Written::text).orElse("");
    }

    private Map<Nutrient, BigDecimal> nutrients(Row row) {
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
    private BigDecimal refuse(Row row) {
        String column = row.cell("refuse_as_sold").isEmpty() ? "REFUSE" : "refuse_as_sold";
        return row.decimal(column, REFUSE, "Enter the share that is thrown away, in %; 0 when all of it is eaten")
                .orElse(BigDecimal.ZERO);
    }

    private Set<Allergen> allergens(Written cell) {
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
