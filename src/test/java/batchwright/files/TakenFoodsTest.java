package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.disk.Read;
import batchwright.files.foods.CatalogueColumns;
import batchwright.files.foods.CatalogueTable;
import batchwright.food.Allergen;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.reference.Sr28;
import batchwright.reference.Sr28Food;
import batchwright.reference.Sr28Measure;
import batchwright.reference.Sr28Measures;
import batchwright.reference.take.CatalogueLine;
import batchwright.reference.take.MeasureLines;
import batchwright.reference.take.Proposal;
import batchwright.text.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every food of USDA SR28 that can be taken over is read back as it was written. */
class TakenFoodsTest {
    /** Their descriptions name no word that would not be wrong for many others; the label is to be read anyway. */
    private static final String[] NOT_IN_THE_DESCRIPTION = {"granola_bar", "oyster_sauce", "soy_protein_powder"};

    private static final Sr28 TABLE = Sr28.load();
    /** Of the source's foods, so many have an energy far from the general factors; they are warned of. */
    private static final int MOST_WARNINGS = 106;

    @Test
    void each_line_reads_back_without_an_error_and_with_equal_values() {
        Map<String, Sr28Food> foods = new LinkedHashMap<>();
        var catalogue = new StringBuilder(String.join(",", CatalogueTable.columns())).append('\n');
        for (Sr28Food food : TABLE.foods()) {
            Proposal proposal = Proposal.of(food, foods::containsKey);
            foods.put(proposal.id(), food);
            catalogue
                    .append(CatalogueLine.of(proposal, CatalogueTable.columns()))
                    .append('\n');
        }

        Read<Kitchen> read = KitchenReader.readFoods(files(catalogue.toString(), ""), FilesInMemory.DAY);

        assertThat(read.problems()).noneMatch(Problem::isError);
        assertThat(read.problems()).hasSizeLessThanOrEqualTo(MOST_WARNINGS);
        Map<String, Food> back = read.value().orElseThrow().foods();
        assertThat(back.keySet()).containsExactlyElementsOf(foods.keySet());
        foods.forEach((id, source) -> assertSame(Objects.requireNonNull(back.get(id)), source));
    }

    private static void assertSame(Food food, Sr28Food source) {
        for (Nutrient nutrient : Nutrient.columns()) {
            assertThat(food.per100g().isComplete(nutrient))
                    .isEqualTo(source.amount(nutrient).isPresent());
            source.amount(nutrient)
                    .ifPresent(value -> assertThat(food.per100g().get(nutrient)).isEqualTo(value));
        }
        assertThat(food.ndb()).contains(source.ndb());
        assertThat(food.description()).isEqualTo(source.description());
        if (!source.refuse().isEmpty()) {
            assertThat(food.refusePercent()).isEqualByComparingTo(source.refuse());
        }
    }

    @Test
    void each_measure_reads_back() {
        var catalogue = new StringBuilder(String.join(",", CatalogueTable.columns())).append('\n');
        List<String> lines = new ArrayList<>();
        var all = Sr28Measures.load();
        for (Sr28Food food : TABLE.foods()) {
            List<Sr28Measure> measures = food.ndb().endsWith("1") ? all.of(food) : List.of();
            if (!measures.isEmpty()) {
                String id = "food_" + food.ndb();
                catalogue
                        .append(CatalogueLine.of(Proposal.of(food, any -> false), CatalogueTable.columns())
                                .replaceFirst("^[a-z0-9_]+", id))
                        .append('\n');
                lines.addAll(MeasureLines.of(id, measures));
            }
        }

        Read<Kitchen> read = KitchenReader.readFoods(
                files(catalogue.toString(), String.join("\n", lines) + "\n"), FilesInMemory.DAY);

        assertThat(read.problems()).noneMatch(Problem::isError);
        assertThat(lines).hasSizeGreaterThan(500);
        assertThat(read.value().orElseThrow().measures().values().stream()
                        .mapToInt(List::size)
                        .sum())
                .isEqualTo(lines.size());
    }

    /** The header of a catalogue may name its columns in another order. */
    @Test
    void a_line_follows_the_user_s_own_header() {
        List<String> columns = new ArrayList<>(CatalogueTable.columns());
        java.util.Collections.reverse(columns);
        FilesInMemory files = files("# mine\n\n" + String.join(",", columns) + "\n", "");

        assertThat(CatalogueColumns.of(files)).containsExactlyElementsOf(columns);
        assertThat(CatalogueColumns.of(new FilesInMemory())).isEqualTo(CatalogueTable.columns());
        Proposal millet = Proposal.of(TABLE.food("20031").orElseThrow(), id -> false);
        files.with("foods/catalogue.csv", String.join(",", columns) + "\n" + CatalogueLine.of(millet, columns) + "\n");
        assertThat(KitchenReader.readFoods(files, FilesInMemory.DAY)
                        .value()
                        .orElseThrow()
                        .foods())
                .containsOnlyKeys("millet");
    }

    /** For the foods that the catalogue has already, the guess names every allergen that was put there by hand. */
    @Test
    void no_allergen_of_the_starter_catalogue_is_overlooked() {
        Map<String, String> overlooked = new HashMap<>();
        for (Food food : KitchenReader.read(FilesInMemory.starter(), FilesInMemory.DAY)
                .value()
                .orElseThrow()
                .foods()
                .values()) {
            food.ndb().flatMap(TABLE::food).ifPresent(source -> {
                var missing = new ArrayList<>(food.allergens());
                missing.removeAll(Proposal.of(source, id -> false).allergens());
                if (!missing.isEmpty()) {
                    overlooked.put(
                            food.id(),
                            missing.stream().map(Allergen::id).toList().toString());
                }
            });
        }
        assertThat(overlooked).as("by no word of their descriptions").containsOnlyKeys(NOT_IN_THE_DESCRIPTION);
    }

    private static FilesInMemory files(String catalogue, String measures) {
        return new FilesInMemory()
                .with("foods/catalogue.csv", catalogue)
                .with("foods/measures.csv", "food,measure,grams,snack_max,source\n" + measures)
                .with("foods/yields.csv", "food,method,yield,flag,source\n")
                .with("foods/shop.csv", "food,shop,pack,grams,price,currency,seen,note\n");
    }
}
