package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.text.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables with fewer columns, with columns in another order, and of other versions. */
class TableColumnsTest {
    private static final String CATALOGUE = "foods/catalogue.csv";
    private static final String LABELS = "foods/labels.csv";
    private static final Set<Nutrient> ALWAYS =
            Set.of(Nutrient.ENERGY, Nutrient.PROTEIN, Nutrient.FAT, Nutrient.CARBOHYDRATE);

    /** There may be warnings: of a food whose fibre is not known, energy may look too low. */
    private static Kitchen kitchen(FilesInMemory files) {
        return KitchenReader.readFoods(files, FilesInMemory.DAY).value().orElseThrow();
    }

    /** The starter files, one of whose tables has these columns, in this order. */
    private static FilesInMemory with(String table, UnaryOperator<List<String>> columns) {
        FilesInMemory files = FilesInMemory.starter();
        return files.with(table, changed(files.text(table), columns));
    }

    private static String changed(String table, UnaryOperator<List<String>> columns) {
        String rows = table.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(rows, format)) {
            List<String> kept = columns.apply(new ArrayList<>(parser.getHeaderNames()));
            var text = new StringBuilder(String.join(",", kept)).append("\n");
            for (CSVRecord row : parser) {
                text.append(CSVFormat.RFC4180.format(kept.stream()
                                .map(column -> row.isSet(column) ? row.get(column) : "")
                                .toArray()))
                        .append("\n");
            }
            return text.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static UnaryOperator<List<String>> without(Collection<String> left) {
        return columns -> {
            columns.removeAll(left);
            return columns;
        };
    }

    private static List<String> reversed(List<String> columns) {
        Collections.reverse(columns);
        return columns;
    }

    private static List<Food> catalogue(Kitchen kitchen) {
        return kitchen.foods().values().stream()
                .filter(f -> f.ndb().isPresent())
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Nutrient.class)
    void a_nutrient_without_a_column_is_not_known_of_any_food(Nutrient nutrient) {
        if (ALWAYS.contains(nutrient) || nutrient.tagname().isEmpty()) {
            return;
        }
        List<Food> all = catalogue(kitchen(FilesInMemory.starter()));
        List<Food> foods = catalogue(kitchen(with(CATALOGUE, without(List.of(nutrient.tagname())))));

        assertThat(foods).hasSameSizeAs(all).allSatisfy(food -> {
            assertThat(food.per100g().isKnown(nutrient)).isFalse();
            assertThat(food.per100g().isComplete(nutrient)).isFalse();
        });
        for (int i = 0; i < all.size(); i++) {
            for (Nutrient other : Nutrient.values()) {
                if (other != nutrient) {
                    assertThat(foods.get(i).per100g().get(other))
                            .isEqualTo(all.get(i).per100g().get(other));
                }
            }
        }
    }

    /** Energy, protein, fat and carbohydrate of every food must be known: no plan can do without. */
    @ParameterizedTest
    @ValueSource(strings = {"ENERC_KCAL", "PROCNT", "FAT", "CHOCDF"})
    void what_every_plan_needs_must_have_a_column(String column) {
        assertThat(with(CATALOGUE, without(List.of(column))).problems())
                .extracting(Problem::render)
                .singleElement()
                .asString()
                .contains(CATALOGUE, "the header lacks " + column);
    }

    @Test
    void a_column_that_is_not_known_is_told_with_the_nearest_name() {
        FilesInMemory files = FilesInMemory.starter();
        files.with(CATALOGUE, files.text(CATALOGUE).replaceFirst(",FIBTG,", ",FIBTGG,"));

        assertThat(files.problems())
                .extracting(Problem::render)
                .singleElement()
                .asString()
                .contains("there is no column called \"FIBTGG\"", "nearest: \"FIBTG\"");
    }

    @Test
    void columns_may_stand_in_any_order() {
        Kitchen starter = kitchen(FilesInMemory.starter());

        for (String table : List.of(CATALOGUE, LABELS, "foods/measures.csv", "foods/shop.csv", "foods/yields.csv")) {
            Kitchen kitchen = kitchen(with(table, TableColumnsTest::reversed));
            assertThat(kitchen.foods()).as(table).isEqualTo(starter.foods());
            assertThat(kitchen.packs()).as(table).isEqualTo(starter.packs());
            assertThat(kitchen.measures()).as(table).isEqualTo(starter.measures());
            assertThat(kitchen.yields()).as(table).isEqualTo(starter.yields());
        }
    }

    @Test
    void labels_need_only_what_every_plan_needs() {
        List<String> left = List.of("saturated_g", "sugar_g", "fibre_g", "salt_or_sodium", "polyols_g", "iron_mg");
        Food bar = Objects.requireNonNull(
                kitchen(with(LABELS, without(left))).foods().get("example_protein_bar"));

        for (Nutrient nutrient : List.of(Nutrient.SATURATED_FAT, Nutrient.SUGAR, Nutrient.SODIUM, Nutrient.IRON)) {
            assertThat(bar.per100g().isKnown(nutrient)).as(nutrient.label()).isFalse();
        }
    }

    @Test
    void a_label_may_state_any_mineral_or_vitamin() {
        FilesInMemory files = FilesInMemory.starter();
        String table = changed(files.text(LABELS), columns -> columns)
                .replaceFirst("(?m)^(food,.*?)\r?$", "$1,magnesium_mg,vitamin_b12_ug")
                .replaceFirst("(?m)^(example_protein_bar,.*?)\r?$", "$1,45,0.9");

        Food bar = Objects.requireNonNull(
                kitchen(files.with(LABELS, table)).foods().get("example_protein_bar"));

        // 45 mg and 0.9 ug in a bar of 45 g
        assertThat(bar.per100g().get(Nutrient.MAGNESIUM)).isEqualByComparingTo("100");
        assertThat(bar.per100g().get(Nutrient.VITAMIN_B12)).isEqualByComparingTo("2");
    }

    @Test
    void starter_tables_say_their_version_and_a_table_need_not() {
        FilesInMemory files = FilesInMemory.starter();
        List<String> tables =
                files.paths().stream().filter(path -> path.endsWith(".csv")).toList();

        assertThat(tables)
                .hasSize(6)
                .allSatisfy(table -> assertThat(files.text(table)).startsWith("# batchwright table 1\n"));
        tables.forEach(table -> files.with(table, files.text(table).replaceFirst(".*\n", "")));
        assertThat(kitchen(files).foods())
                .isEqualTo(kitchen(FilesInMemory.starter()).foods());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                CATALOGUE,
                LABELS,
                "foods/measures.csv",
                "foods/shop.csv",
                "foods/yields.csv",
                "profiles/pantry.csv"
            })
    void a_table_of_a_newer_version_is_told_and_not_read(String table) {
        for (String line : List.of("# batchwright table 2", "#batchwright table 12", "\"# batchwright table 2\",,,")) {
            FilesInMemory files = FilesInMemory.starter();
            files.with(table, files.text(table).replaceFirst(".*", line));

            assertThat(KitchenReader.read(files, FilesInMemory.DAY).problems())
                    .extracting(Problem::render)
                    .first()
                    .asString()
                    .startsWith(table + ":1:")
                    .contains("written for a newer version");
        }
    }

    /** Only the first line tells the version; elsewhere the words are a comment like any other. */
    @Test
    void a_comment_is_no_version() {
        FilesInMemory files = FilesInMemory.starter();
        String shop = files.text("foods/shop.csv");

        assertThat(kitchen(files.with("foods/shop.csv", shop + "# batchwright table 2\n"))
                        .packs())
                .isEqualTo(kitchen(FilesInMemory.starter()).packs());
        assertThat(kitchen(files.with("foods/shop.csv", "# Our batchwright table 2 of 3\n" + shop))
                        .packs())
                .isNotEmpty();
    }
}
