package batchwright.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Nutrient;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The table of the program against its source: US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory.
 * USDA National Nutrient Database for Standard Reference, Release 28. Version Current: September 2015. Rows drawn from it are in
 * sr28_sample.csv.
 */
class Sr28PublishedTest {
    /** Table 3 of the source's documentation. */
    private static final int FOODS_OF_THE_SOURCE = 8789;
    /** Rows with a word of two capital letters or more that is no abbreviation, and those with a trade name in small letters. */
    private static final int WITH_CAPITALS = 1907;

    private static final int WITH_SMALL_TRADE_NAMES = 18;
    private static final Set<String> ABBREVIATIONS = Set.of("USDA", "NFS", "NFSMI", "BBQ", "DHA", "VPP");

    private final Sr28 table = Sr28.load();

    @Test
    void all_foods_but_those_with_a_trade_name() {
        assertThat(table.foods()).hasSize(FOODS_OF_THE_SOURCE - WITH_CAPITALS - WITH_SMALL_TRADE_NAMES);
        assertThat(table.foods().stream().map(Sr28Food::ndb))
                .doesNotHaveDuplicates()
                .isSorted();
    }

    @Test
    void no_trade_name_is_left() {
        var capitals = Pattern.compile("[A-Za-z']*[A-Z][A-Za-z']*[A-Z][A-Za-z']*");
        var found = new HashSet<String>();
        table.foods()
                .forEach(food ->
                        capitals.matcher(food.description()).results().forEach(word -> found.add(word.group())));
        assertThat(found).isSubsetOf(ABBREVIATIONS);

        var small = Pattern.compile(
                "(?i)\\b(vitasoy|campbell's|creamsicle|propel|powerade|natreon|clif|reddi|muscle milk|lean pockets|"
                        + "hain|cornnuts|lesuer|incaparina|kiwano)\\b|Monster|Post,");
        assertThat(table.foods().stream()
                        .map(Sr28Food::description)
                        .filter(d -> small.matcher(d).find()))
                .isEmpty();
    }

    @Test
    void measures_hold_no_trade_name_either() {
        assertThat(Resource.rows("sr28_measures.csv").lines().filter(line -> !line.isEmpty()))
                .hasSizeGreaterThan(6000)
                .noneMatch(line -> line.chars().anyMatch(Character::isUpperCase));
    }

    @Test
    void values_are_the_published_ones_digit_for_digit() {
        List<String> differences = new ArrayList<>();
        List<CSVRecord> sample = sample();
        for (CSVRecord row : sample) {
            Sr28Food food = table.food(row.get("id")).orElseThrow();
            compare(row, "name", food.description(), differences);
            compare(row, "GROUP", food.group(), differences);
            compare(row, "REFUSE", food.refuse(), differences);
            Nutrient.columns().forEach(n -> compare(row, n.tagname(), food.written(n), differences));
        }
        assertThat(differences).isEmpty();
        assertThat(sample).hasSizeGreaterThan(90);
    }

    private static void compare(CSVRecord row, String column, String ours, List<String> differences) {
        if (!row.get(column).equals(ours)) {
            differences.add("%s %s: %s, published %s".formatted(row.get("id"), column, ours, row.get(column)));
        }
    }

    @Test
    void numbers_that_are_not_there() {
        for (String number : List.of("99999", "00000", "1001", "", "01001,", "Butter")) {
            assertThat(table.food(number)).as(number).isEmpty();
        }
        assertThat(table.food("01001")).hasValueSatisfying(f -> assertThat(f).hasToString("01001 Butter, salted"));
    }

    private static List<CSVRecord> sample() {
        var format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = CSVParser.parse(Path.of("src/test/resources/published/sr28_sample.csv"), UTF_8, format)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
