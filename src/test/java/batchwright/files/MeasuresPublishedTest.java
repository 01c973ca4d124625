package batchwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import batchwright.files.disk.StarterFiles;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Household measures, as the program reads them, against USDA SR28 (sr28_measures.csv, its source at its top) and common practice. */
class MeasuresPublishedTest {
    private static final Kitchen KITCHEN =
            KitchenReader.read(new StarterFiles(), FilesInMemory.DAY).value().orElseThrow();
    private static final Map<String, CSVRecord> SR28 = CsvRows.published("sr28_measures.csv").stream()
            .collect(Collectors.toMap(row -> row.get("id") + " " + row.get("seq"), Function.identity()));
    private static final List<Measure> MEASURES =
            KITCHEN.measures().values().stream().flatMap(List::stream).toList();

    private static final Pattern ONE = Pattern.compile("SR28 seq (\\d+)(?: divided by ([0-9.]+))?");
    private static final Pattern SPOONS = Pattern.compile("SR28 seq (\\d+): .* of ([0-9.]+) g is (\\d+) spoons");

    /** The rest are one of a kind, or common practice: their line says how. For those as sold see MeasuresAsSoldTest. */
    @Test
    void nearly_all_are_published_weights() {
        assertThat(MEASURES.stream()
                        .filter(m -> !m.source().startsWith("as sold"))
                        .filter(m -> !ONE.matcher(m.source()).matches()
                                && !SPOONS.matcher(m.source()).matches()))
                .hasSizeLessThan(MEASURES.size() / 25);
    }

    @Test
    void a_measure_is_the_published_weight_or_a_part_of_it() {
        assertThat(MEASURES.stream().filter(m -> ONE.matcher(m.source()).matches()))
                .hasSizeGreaterThan(600)
                .allSatisfy(measure -> {
                    Matcher source = matched(ONE, measure);
                    CSVRecord published = published(measure, source.group(1));
                    BigDecimal grams = new BigDecimal(published.get("grams"));
                    BigDecimal parts = source.group(2) == null ? BigDecimal.ONE : new BigDecimal(source.group(2));
                    assertThat(measure.grams().subtract(grams.divide(parts, 3, RoundingMode.HALF_UP)))
                            .as(measure.food() + " " + measure.name())
                            .isBetween(new BigDecimal("-0.006"), new BigDecimal("0.006"));
                });
    }

    /** To 2 %: some are rounded to whole grams. */
    @Test
    void a_spoon_is_its_part_of_the_published_cup() {
        assertThat(MEASURES.stream().filter(m -> SPOONS.matcher(m.source()).matches()))
                .hasSizeGreaterThan(40)
                .allSatisfy(measure -> {
                    Matcher source = matched(SPOONS, measure);
                    double cup = Double.parseDouble(
                            published(measure, source.group(1)).get("grams"));
                    assertThat(Double.parseDouble(source.group(2))).isEqualTo(cup);
                    assertThat(measure.grams().doubleValue())
                            .as(measure.food() + " " + measure.name())
                            .isCloseTo(cup / Double.parseDouble(source.group(3)), withinPercentage(2));
                });
    }

    /** Common practice: 15 ml at 0.91 g/ml to 15 g; USDA SR28 has 13.5 g of olive oil, within the rounding of a spoon. */
    @Test
    void a_tablespoon_of_oil_is_what_cooks_expect() {
        List<Measure> spoons = MEASURES.stream()
                .filter(m -> m.food().id().endsWith("_oil") && m.name().equals("tbsp"))
                .toList();

        assertThat(spoons)
                .hasSize(6)
                .allSatisfy(spoon -> assertThat(spoon.grams()).isBetween(new BigDecimal("13.5"), new BigDecimal("15")));
    }

    /** Common practice: a scoop of about 30 g is about an ounce (28.35 g), a medium potato about 200 g; here within 15 %. */
    @Test
    void a_scoop_and_a_potato_are_what_cooks_expect() {
        assertThat(grams("whey_powder", "scoop")).isBetween(28.35 * 0.85, 28.35 * 1.15);
        assertThat(grams("potato", "medium")).isBetween(200 * 0.85, 200 * 1.15);
    }

    private static double grams(String food, String measure) {
        return KITCHEN.measure(Objects.requireNonNull(KITCHEN.foods().get(food)), measure)
                .orElseThrow()
                .grams()
                .doubleValue();
    }

    private static CSVRecord published(Measure measure, String seq) {
        return Objects.requireNonNull(SR28.get(measure.food().ndb().orElseThrow() + " " + seq));
    }

    private static Matcher matched(Pattern pattern, Measure measure) {
        Matcher matcher = pattern.matcher(measure.source());
        assertThat(matcher.matches()).isTrue();
        return matcher;
    }
}
