package batchwright.files.foods;

import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.PROTEIN;
import static batchwright.food.Nutrient.WATER;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import batchwright.files.CsvRows;
import batchwright.files.FilesInMemory;
import batchwright.files.KitchenReader;
import batchwright.files.disk.StarterFiles;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Cooked weights against what was published: weights and factors (cooked_weights.csv), and the cooked foods of USDA SR28
 * (sr28_cooked_rows.csv), each with its source at its top. Raw values and yields are those the program reads.
 *
 * <p>A balance says what 100 g cooked would hold if cooking moved only water and fat: raw content / yield. Of SR28's cooked fish
 * protein and dry matter balance exactly: it seems to be reckoned from the raw one, so fish says little about the method.
 */
class YieldsPublishedTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final List<CSVRecord> WEIGHTS = CsvRows.published("cooked_weights.csv");
    private static final Map<String, CSVRecord> COOKED = CsvRows.published("sr28_cooked_rows.csv").stream()
            .collect(Collectors.toMap(row -> row.get("id"), Function.identity()));
    private static final Pattern DERIVED =
            Pattern.compile("SR28 (\\d{5}) and (\\d{5}): (protein|dry matter) balance.*");

    /** Yields are written with three decimals. */
    private static final double ROUNDING = 0.0006;
    /**
     * Published factors against SR28's cooked entries, which are other samples: up to 23 % (fat-free dry matter of oven fries,
     * protein of fava beans). A line moved to another kind of food, or a factor of a wrong pair, is further off.
     */
    private static final double OTHER_SAMPLES = 0.25;
    /** Mean of all pairs: published factors give 7.7 % more protein and dry matter than the cooked entries. */
    private static final double MEAN = 0.10;
    /** A yield derived from one balance against the other: up to 12.1 % where SR28's samples differ. */
    private static final double OTHER_BALANCE = 0.125;

    /** Lines whose raw and cooked entries in SR28 cannot be of alike samples. */
    private static final Map<String, String> NOT_ALIKE = Map.ofEntries(
            entry(
                    "frozen_green_beans boiled",
                    "the boiled entry would need a yield of 1.17: no vegetable gains weight in boiling"),
            entry(
                    "frozen_cauliflower boiled",
                    "the boiled entry would need a yield of 1.25: no vegetable gains weight in boiling"),
            entry(
                    "pearl_barley boiled",
                    "dry matter gives 2.9, protein 4.4; with 4.4 there would be more dry matter than was put in"));

    /** What SR28 says of a cooked food, and the yield that should lead to it. */
    private record Pair(CookedYield line, CSVRecord cooked) {
        /** Share by which the raw food's protein / yield is more than the cooked food's. */
        double protein() {
            return raw(PROTEIN) / line.factor().doubleValue() / cooked(PROTEIN) - 1;
        }

        /** The same for what is neither water nor fat: fat that runs out of meat is not counted. */
        double dryMatter() {
            return (100 - raw(WATER) - raw(FAT)) / line.factor().doubleValue() / (100 - cooked(WATER) - cooked(FAT))
                    - 1;
        }

        /** The same for all but water, for a food that loses no fat. */
        double dryMatterWithFat() {
            return (100 - raw(WATER)) / line.factor().doubleValue() / (100 - cooked(WATER)) - 1;
        }

        private double raw(Nutrient nutrient) {
            return line.food().per100g().get(nutrient).doubleValue();
        }

        private double cooked(Nutrient nutrient) {
            return Double.parseDouble(cooked.get(nutrient.tagname()));
        }

        boolean isAlike() {
            return !NOT_ALIKE.containsKey(nameOf(line));
        }

        @Override
        public String toString() {
            return nameOf(line);
        }
    }

    static List<CSVRecord> weights() {
        return WEIGHTS;
    }

    static List<Pair> checkedPairs() {
        return WEIGHTS.stream()
                .map(row -> new Pair(line(row.get("food"), row.get("method")), cooked(row.get("cooked_ndb"))))
                .filter(Pair::isAlike)
                .toList();
    }

    static List<CookedYield> derived() {
        return flagged("derived").toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("weights")
    void a_checked_yield_is_the_published_cooked_weight_by_the_raw(CSVRecord row) {
        CookedYield line = line(row.get("food"), row.get("method"));

        assertThat(line.factor().doubleValue())
                .isCloseTo(
                        Double.parseDouble(row.get("cooked")) / Double.parseDouble(row.get("raw")), offset(ROUNDING));
        assertThat(line.flag()).isEqualTo("checked");
    }

    /** A line must not call itself checked without a published weight here; Table 22 has 14 legumes. */
    @Test
    void every_checked_yield_is_compared() {
        assertThat(WEIGHTS.stream().map(row -> row.get("food") + " " + row.get("method")))
                .containsExactlyInAnyOrderElementsOf(
                        flagged("checked").map(YieldsPublishedTest::nameOf).toList());
        assertThat(WEIGHTS.stream().filter(row -> row.get("source").endsWith("Table 22")))
                .hasSize(14);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("checkedPairs")
    void a_checked_yield_leads_to_the_published_cooked_food(Pair pair) {
        assertThat(pair.protein()).as("protein").isCloseTo(0, offset(OTHER_SAMPLES));
        assertThat(pair.dryMatter()).as("fat-free dry matter").isCloseTo(0, offset(OTHER_SAMPLES));
    }

    @Test
    void checked_yields_lead_on_average_to_the_published_cooked_foods() {
        List<Pair> pairs = checkedPairs();

        assertThat(pairs).hasSizeGreaterThanOrEqualTo(15);
        assertThat(pairs.stream()
                        .mapToDouble(pair -> (pair.protein() + pair.dryMatter()) / 2)
                        .average()
                        .orElseThrow())
                .isCloseTo(0, offset(MEAN));
    }

    /** Its own balance to the last digit, and the other one, which it was not derived from. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("derived")
    void a_derived_yield_is_its_balance_and_agrees_with_the_other(CookedYield line) {
        Matcher source = DERIVED.matcher(line.source());
        assertThat(source.matches()).as(line.source()).isTrue();
        assertThat(line.food().ndb()).hasValue(source.group(1));
        var pair = new Pair(line, cooked(source.group(2)));
        boolean byProtein = source.group(3).equals("protein");

        double own = byProtein ? pair.protein() : pair.dryMatterWithFat();
        assertThat(own * line.factor().doubleValue()).isCloseTo(0, offset(ROUNDING));
        if (pair.isAlike()) {
            assertThat(byProtein ? pair.dryMatter() : pair.protein()).isCloseTo(0, offset(OTHER_BALANCE));
        }
    }

    /** Common practice: long grain rice cooks to about 2.4 times its weight, give or take a fifth. */
    @Test
    void white_rice_cooks_to_what_cooks_expect() {
        Food rice = food("white_rice");

        assertThat(KITCHEN.yields().get(rice))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.factor().doubleValue()).isBetween(2.4 * 0.8, 2.4 * 1.2));
    }

    private static Food food(String id) {
        return Objects.requireNonNull(KITCHEN.foods().get(id), id);
    }

    private static Stream<CookedYield> flagged(String flag) {
        return KITCHEN.yields().values().stream()
                .flatMap(List::stream)
                .filter(y -> y.flag().equals(flag));
    }

    private static CookedYield line(String food, String method) {
        return KITCHEN.yields().getOrDefault(food(food), List.of()).stream()
                .filter(y -> y.method().equals(method))
                .findFirst()
                .orElseThrow();
    }

    private static CSVRecord cooked(String ndb) {
        return Objects.requireNonNull(COOKED.get(ndb), ndb);
    }

    private static String nameOf(CookedYield line) {
        return line.food().id() + " " + line.method();
    }
}
