package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The catalogue against the table it was taken from: US Department of Agriculture, Agricultural Research Service, Nutrient Data
 * Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: September 2015. Its rows are in
 * sr28_rows.csv, values unchanged. Both files are read as plain text here, not by the program.
 */
class CataloguePublishedTest {
    private static final List<String> NUTRIENTS = List.of(
            "ENERC_KCAL",
            "PROCNT",
            "FAT",
            "FASAT",
            "CHOCDF",
            "SUGAR",
            "FIBTG",
            "NA",
            "K",
            "CA",
            "FE",
            "MG",
            "ZN",
            "VITA_RAE",
            "VITC",
            "VITD",
            "VITB12",
            "FOL",
            "FOLDFE",
            "WATER",
            "REFUSE");
    /** Columns that are the program's own; every other column is the source's. */
    private static final List<String> OWN = List.of(
            "food",
            "name",
            "group",
            "usda_ndb",
            "usda_description",
            "refuse_as_sold",
            "fruit_veg",
            "perishable",
            "allergens",
            "origins",
            "taken_off");

    /** Of the 402 foods of the catalogue; the rest lack a factor in the source. */
    private static final int FOODS_WITH_FACTORS = 338;

    private static final List<CSVRecord> CATALOGUE = CsvRows.read(Path.of("foods/catalogue.csv"));
    private static final Map<String, CSVRecord> SR28 = CsvRows.published("sr28_rows.csv").stream()
            .collect(Collectors.toMap(row -> row.get("id"), Function.identity()));

    @Test
    void every_value_is_the_published_one_digit_for_digit() {
        List<String> differences = new ArrayList<>();
        for (CSVRecord food : CATALOGUE) {
            CSVRecord published = published(food);
            if (!food.get("usda_description").equals(published.get("name"))) {
                differences.add(food.get("food") + " is not " + published.get("name"));
            }
            for (String column : NUTRIENTS) {
                if (!food.get(column).equals(published.get(column))) {
                    differences.add("%s %s: %s, published %s"
                            .formatted(food.get("food"), column, food.get(column), published.get(column)));
                }
            }
        }
        assertThat(differences).isEmpty();
    }

    /** A column that is added later must be compared too. */
    @Test
    void no_column_is_left_out() {
        assertThat(CATALOGUE.get(0).getParser().getHeaderNames())
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(OWN.stream(), NUTRIENTS.stream()).toList());
    }

    /** A row of the source that no food uses would be compared with nothing. */
    @Test
    void every_row_of_the_source_is_one_food() {
        assertThat(CATALOGUE.stream().map(food -> food.get("usda_ndb")))
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrderElementsOf(SR28.keySet());
    }

    /**
     * Energy = PROFACTOR x protein + FATFACTOR x fat + CHOFACTOR x carbohydrate + 6.93 x alcohol, the source's own factors
     * [kcal/g]. Of all 8789 foods of the source 4565 give three factors, and 6 of those miss by more than is allowed here.
     */
    @Test
    void energy_is_what_the_source_s_own_factors_make_of_the_macros() {
        List<String> off = new ArrayList<>();
        int compared = 0;
        for (CSVRecord food : CATALOGUE) {
            CSVRecord published = published(food);
            if (Stream.of("PROFACTOR", "FATFACTOR", "CHOFACTOR")
                    .allMatch(c -> !published.get(c).isEmpty())) {
                compared++;
                double stated = number(food, "ENERC_KCAL");
                double fromMacros = number(published, "PROFACTOR") * number(food, "PROCNT")
                        + number(published, "FATFACTOR") * number(food, "FAT")
                        + number(published, "CHOFACTOR") * number(food, "CHOCDF")
                        + 6.93 * number(published, "ALC");
                if (Math.abs(stated - fromMacros) > Math.max(3, 0.05 * stated)) {
                    off.add(food.get("food") + ": " + stated + " kcal, by factors " + fromMacros);
                }
            }
        }
        assertThat(off).isEmpty();
        assertThat(compared).as("foods with all three factors").isEqualTo(FOODS_WITH_FACTORS);
    }

    private static CSVRecord published(CSVRecord food) {
        return Optional.ofNullable(SR28.get(food.get("usda_ndb"))).orElseThrow();
    }

    /** An empty cell says nothing; only alcohol may be empty in these rows, and then there is none to speak of. */
    private static double number(CSVRecord row, String column) {
        String text = row.get(column);
        if (text.isEmpty()) {
            assertThat(column).isEqualTo("ALC");
            return 0;
        }
        return new BigDecimal(text).doubleValue();
    }
}
