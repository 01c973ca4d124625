package batchwright.solve.snack;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases of {@code published/snack_cases.json}; where they come from stands in the source file beside it. */
class SnackCasesPublishedTest {
    private static final Map<String, Smallest> READINGS = Map.of(
            "least_energy", Smallest.ENERGY,
            "fewest_pieces", Smallest.PIECES,
            "least_cost", Smallest.COST,
            "least_grams", Smallest.GRAMS);

    static Stream<Arguments> cases() throws IOException {
        List<Arguments> cases = new ArrayList<>();
        for (JsonNode node : file().get("cases")) {
            READINGS.keySet().stream()
                    .sorted()
                    .forEach(reading -> cases.add(Arguments.of(node.get("id").textValue(), reading, node)));
        }
        return cases.stream();
    }

    private static JsonNode file() throws IOException {
        try (InputStream in = SnackCasesPublishedTest.class.getResourceAsStream("/published/snack_cases.json")) {
            return new ObjectMapper().readTree(in);
        }
    }

    @Test
    void there_are_17_cases_under_4_readings() throws IOException {
        assertThat(cases()).hasSize(17 * 4);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("cases")
    void matches_the_enumerated_answer(String id, String reading, JsonNode node) {
        SnackResult result = SnackSearch.search(items(node), ask(node, Objects.requireNonNull(READINGS.get(reading))));

        JsonNode expected = node.get("expected").get(reading);
        assertThat(node.get("status").textValue()).isEqualTo(expected.isNull() ? "infeasible" : "optimal");
        if (expected.isNull()) {
            assertThat(Snacks.notReachable(result)).isPresent();
            return;
        }
        SnackAnswer best = Snacks.found(result).orElseThrow().answers().get(0);
        assertThat(best.energyKcal()).isEqualByComparingTo(number(expected, "kcal"));
        assertThat(best.overKcal()).isEqualByComparingTo(number(expected, "overshoot"));
        assertThat(best.pieces()).isEqualTo(expected.get("pieces").intValue());
        assertThat(best.cost()).isEqualByComparingTo(number(expected, "cost"));
        assertThat(best.grams()).isEqualByComparingTo(number(expected, "grams"));
        if (expected.get("tied_answers").intValue() == 1) {
            assertThat(best.counts()).isEqualTo(counts(expected.get("quantities")));
            assertThat(best.proteinG()).isEqualByComparingTo(number(expected, "protein"));
        }
    }

    @Test
    void a_cupboard_too_small_is_60_kcal_short_of_300() throws IOException {
        JsonNode node = named("cupboard-too-small");

        SnackResult.NotReachable result = notReachable(node);

        assertThat(result.missing()).isEqualTo(SnackResult.Missing.ENERGY);
        assertThat(result.closest().energyKcal()).isEqualByComparingTo(number(node, "most_kcal_reachable"));
        assertThat(result.kcalShort()).isEqualByComparingTo("60");
        assertThat(result.over()).isEmpty();
    }

    @Test
    void an_empty_window_offers_the_totals_180_and_210_on_its_two_sides() throws IOException {
        SnackResult.NotReachable result = notReachable(named("window-empty"));

        assertThat(result.missing()).isEqualTo(SnackResult.Missing.WINDOW);
        assertThat(result.over().orElseThrow().energyKcal()).isEqualByComparingTo("210");
        assertThat(result.over().orElseThrow().overKcal()).isEqualByComparingTo("10");
        // 0 70 90 140 150 160 180 | 210 ...: by hand, the totals of 2 x 90, 1 x 150, 3 x 70
        assertThat(result.closest().energyKcal()).isEqualByComparingTo("180");
        assertThat(result.kcalShort()).isEqualByComparingTo("20");
    }

    private static SnackResult.NotReachable notReachable(JsonNode node) {
        SnackResult result = SnackSearch.search(items(node), ask(node, Smallest.ENERGY));
        return Snacks.notReachable(result).orElseThrow();
    }

    private static JsonNode named(String id) throws IOException {
        for (JsonNode node : file().get("cases")) {
            if (node.get("id").textValue().equals(id)) {
                return node;
            }
        }
        throw new AssertionError("no case " + id);
    }

    private static List<SnackItem> items(JsonNode node) {
        List<SnackItem> items = new ArrayList<>();
        for (JsonNode item : node.get("items")) {
            items.add(Snacks.item(
                    item.get("code").textValue(),
                    item.get("kcal").textValue(),
                    item.get("protein").textValue(),
                    item.get("grams").textValue(),
                    item.get("cost").textValue(),
                    item.get("max").intValue()));
        }
        return items;
    }

    private static SnackAsk ask(JsonNode node, Smallest smallest) {
        return new SnackAsk(
                number(node, "gap_kcal"),
                number(node, "min_protein_g"),
                optional(node, "budget"),
                optional(node, "max_kcal"),
                SnackAsk.NO_LIMIT,
                smallest,
                5);
    }

    private static Optional<BigDecimal> optional(JsonNode node, String name) {
        return node.get(name).isNull() ? Optional.empty() : Optional.of(number(node, name));
    }

    private static BigDecimal number(JsonNode node, String name) {
        return new BigDecimal(node.get(name).textValue());
    }

    private static Map<String, Integer> counts(JsonNode quantities) {
        Map<String, Integer> counts = new TreeMap<>();
        quantities
                .fieldNames()
                .forEachRemaining(code -> counts.put(code, quantities.get(code).intValue()));
        return counts;
    }
}
