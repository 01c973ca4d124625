package batchwright.solve.snack;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published knapsacks as snacks: J. Burkardt's collections KNAPSACK_01 and SUBSET_SUM (drawn from Kreher and Stinson 1999, and
 * Martello and Toth 1990) and the bounded knapsack of Rosetta Code. What stays out of a best knapsack is a cheapest cover: weights
 * are energies, profits are costs, and what has to be covered is the whole weight less the capacity. Every optimum in the file
 * was found again by enumeration or dynamic programming outside this program.
 */
class KnapsacksPublishedTest {
    private static JsonNode file() throws IOException {
        try (InputStream in = KnapsacksPublishedTest.class.getResourceAsStream("/published/knapsacks.json")) {
            return new ObjectMapper().readTree(in);
        }
    }

    private static Stream<JsonNode> all(String field) throws IOException {
        return StreamSupport.stream(file().get(field).spliterator(), false).map(JsonNode.class::cast);
    }

    static Stream<JsonNode> knapsacks() throws IOException {
        return all("knapsack01");
    }

    static Stream<JsonNode> subsetSums() throws IOException {
        return all("subset_sum");
    }

    @ParameterizedTest
    @MethodSource("knapsacks")
    void what_stays_out_of_the_best_knapsack_is_the_cheapest_cover(JsonNode node) {
        List<SnackItem> items = new ArrayList<>();
        long weight = 0;
        long profit = 0;
        for (int i = 0; i < node.get("weights").size(); i++) {
            long w = node.get("weights").get(i).longValue();
            long p = node.get("profits").get(i).longValue();
            items.add(item(i, w, p, 1));
            weight += w;
            profit += p;
        }
        long need = weight - node.get("capacity").longValue();

        SnackAnswer best = cheapest(items, need);

        assertThat(best.cost())
                .isEqualByComparingTo(
                        BigDecimal.valueOf(profit - node.get("optimum").longValue()));
    }

    @Test
    void the_bounded_knapsack_leaves_out_its_cheapest_cover() throws IOException {
        JsonNode node = file().get("bounded");
        List<SnackItem> items = new ArrayList<>();
        long weight = 0;
        long value = 0;
        for (JsonNode one : node.get("items")) {
            int most = one.get("max").intValue();
            items.add(item(
                    items.size(),
                    one.get("weight").longValue(),
                    one.get("value").longValue(),
                    most));
            weight += one.get("weight").longValue() * most;
            value += one.get("value").longValue() * most;
        }

        SnackAnswer best = cheapest(items, weight - node.get("capacity").longValue());

        assertThat(best.cost())
                .isEqualByComparingTo(
                        BigDecimal.valueOf(value - node.get("optimum").longValue()));
        assertThat(best.energyKcal())
                .isEqualByComparingTo(BigDecimal.valueOf(
                        weight - node.get("weight_at_optimum").longValue()));
    }

    /** All ways to reach a sum exactly; ask() wants five answers, more than any of these has. */
    @ParameterizedTest
    @MethodSource("subsetSums")
    void every_exact_sum_is_found(JsonNode node) {
        List<SnackItem> items = new ArrayList<>();
        for (JsonNode weight : node.get("weights")) {
            items.add(item(items.size(), weight.longValue(), 1, 1));
        }
        String target = node.get("target").asText();

        SnackResult result =
                SnackSearch.search(items, Snacks.withMostKcal(Snacks.ask(target, Smallest.PIECES), target));

        Optional<SnackResult.Found> found = Snacks.found(result);
        assertThat(found.orElseThrow().answers())
                .hasSize(node.get("exact_solutions").intValue());
        assertThat(found.get().answers())
                .allSatisfy(answer -> assertThat(answer.energyKcal()).isEqualByComparingTo(target));
    }

    private static SnackItem item(int number, long weight, long profit, int most) {
        return Snacks.item("item" + number, "" + weight, "0", "" + weight, "" + profit, most);
    }

    private static SnackAnswer cheapest(List<SnackItem> items, long need) {
        SnackResult result = SnackSearch.search(items, Snacks.ask("" + need, Smallest.COST));
        return Snacks.found(result).orElseThrow().answers().get(0);
    }
}
