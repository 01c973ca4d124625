package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published models through the class that plans are searched with: Stigler's diet (J. Farm Econ. 27(2) 1945, optimum
 * 0.108662278206757 dollars a day), the eight dinners of Fourer, Gay and Kernighan (AMPL, 2nd ed. 2003, ch. 2: 88.20,
 * 118.05940324, 119.30, infeasible) and others. Each case in {@code optimisation_cases.json} names its own source; the
 * expected values there were confirmed with GLPK 5.0, CBC 2.10.8 and HiGHS 1.15.1, the linear ones in exact fractions.
 */
class PublishedModelsTest {
    static Stream<JsonNode> cases() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                PublishedModelsTest.class.getResourceAsStream("/published/optimisation_cases.json"))) {
            JsonNode all = new ObjectMapper().readTree(in).get("cases");
            return StreamSupport.stream(all.spliterator(), false).map(JsonNode.class::cast);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void status_objective_and_unique_solution_agree(JsonNode given) {
        boolean maximise = given.get("sense").asText().equals("max");
        Map<String, Column> columns = new HashMap<>();
        MipModel model = model(given, maximise, columns);

        SearchResult<double[]> result = BranchAndBound.plain(model, Double.POSITIVE_INFINITY, () -> false)
                .search();

        JsonNode expected = given.get("expected");
        assertThat(result.state()).isEqualTo(SearchResult.State.DONE);
        if (expected.get("status").asText().equals("infeasible")) {
            assertThat(result.best()).isEmpty();
            return;
        }
        double objective = Double.parseDouble(expected.get("objective").asText());
        double found = maximise ? -result.cost() : result.cost();
        assertThat(found).isCloseTo(objective, within(1e-7 * Math.max(1, Math.abs(objective))));
        if (expected.path("unique_solution").asBoolean() && expected.has("solution")) {
            double[] x = result.best().orElseThrow();
            columns.forEach((name, column) -> assertThat(x[column.index()])
                    .as(name)
                    .isCloseTo(
                            Double.parseDouble(
                                    expected.get("solution").path(name).asText("0")),
                            within(1e-5)));
        }
    }

    private static MipModel model(JsonNode given, boolean maximise, Map<String, Column> columns) {
        var model = new MipModel();
        var cost = new Expression();
        for (JsonNode v : given.get("variables")) {
            Column column = model.column(
                    v.get("name").asText(),
                    bound(v.get("lower"), Double.NEGATIVE_INFINITY),
                    bound(v.get("upper"), Double.POSITIVE_INFINITY),
                    v.get("integer").asBoolean(),
                    0);
            columns.put(column.name(), column);
            double price = Double.parseDouble(v.get("cost").asText());
            cost.plus(column, maximise ? -price : price);
        }
        for (JsonNode r : given.get("rows")) {
            var sum = new Expression();
            r.get("terms")
                    .properties()
                    .forEach(term -> sum.plus(
                            Objects.requireNonNull(columns.get(term.getKey())),
                            Double.parseDouble(term.getValue().asText())));
            model.row(
                    r.get("name").asText(),
                    sum,
                    bound(r.get("lower"), Double.NEGATIVE_INFINITY),
                    bound(r.get("upper"), Double.POSITIVE_INFINITY));
        }
        model.minimise(cost, 0);
        return model;
    }

    private static double bound(JsonNode node, double none) {
        return node == null || node.isNull() ? none : Double.parseDouble(node.asText());
    }
}
