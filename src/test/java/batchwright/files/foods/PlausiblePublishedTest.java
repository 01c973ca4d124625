package batchwright.files.foods;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.files.value.Problems;
import batchwright.text.Problem;
import batchwright.text.SourceFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No limit refuses or doubts a real food: those of USDA SR28 (Release 28, September 2015) nearest to each limit are taken. All
 * 8,789 foods of it were tried so by hand: none is refused, and only the check of energy warns.
 */
class PlausiblePublishedTest {
    private static final Map<String, String> OWN = Map.of(
            "food",
            "some_food",
            "name",
            "some food",
            "group",
            "other",
            "fruit_veg",
            "no",
            "perishable",
            "no",
            "REFUSE",
            "0");

    static List<CSVRecord> extremes() throws IOException {
        var format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = CSVParser.parse(Path.of("src/test/resources/published/sr28_extremes.csv"), UTF_8, format)) {
            return parser.getRecords();
        }
    }

    @Test
    void every_limit_has_its_nearest_foods() throws IOException {
        assertThat(extremes()).hasSize(40);
    }

    @ParameterizedTest
    @MethodSource("extremes")
    void a_food_that_exists_is_taken(CSVRecord food) {
        assertThat(problems(food, "", ""))
                .as(food.get("name"))
                .allMatch(problem -> !problem.isError() && problem.wrong().startsWith("energy "));
    }

    /** The same foods with one figure just beyond what can be. */
    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({
        "Lard, ENERC_KCAL, 903, energy",
        "Lard, WATER, 5.1, water",
        "Lard, PROCNT, 0.6, protein",
        "'Salt, table', NA, 39341, sodium",
        "'Turkey breast, sliced, prepackaged', SUGAR, 6, sugar",
        "'Turkey breast, sliced, prepackaged', FIBTG, 6, fibre",
        "'Turkey breast, sliced, prepackaged', FASAT, 6, saturated"
    })
    void what_cannot_be_is_refused(String name, String column, String value, String says) throws IOException {
        CSVRecord food = extremes().stream()
                .filter(row -> row.get("name").equals(name))
                .findFirst()
                .orElseThrow();

        assertThat(problems(food, column, value).stream().filter(Problem::isError))
                .anySatisfy(problem -> assertThat(problem.wrong()).startsWith(says));
    }

    private static List<Problem> problems(CSVRecord food, String column, String value) {
        List<String> columns = CatalogueTable.columns();
        List<String> cells = columns.stream()
                .map(c -> c.equals(column) ? value : OWN.getOrDefault(c, food.isMapped(c) ? food.get(c) : ""))
                .toList();
        var problems = new Problems();
        CatalogueTable.read(
                Optional.of(SourceFile.of("catalogue.csv", String.join(",", columns) + "\n" + String.join(",", cells))),
                problems);
        return problems.list();
    }
}
