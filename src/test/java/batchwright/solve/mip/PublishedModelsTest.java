package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
        return PublishedModels.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void status_objective_and_unique_solution_agree(JsonNode given) {
        boolean maximise = PublishedModels.maximises(given);
        Map<String, Column> columns = new HashMap<>();
        MipModel model = PublishedModels.model(given, columns);

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

    static Stream<JsonNode> casesWithDuals() throws IOException {
        return cases().filter(given -> !given.at("/expected/primal_degenerate").asBoolean(true)
                && given.at("/expected/duals").isObject());
    }

    @Test
    void six_cases_have_a_single_set_of_duals() throws IOException {
        assertThat(casesWithDuals()).hasSize(6);
    }

    /** The dual of a row is what a little more on its right-hand side costs; where the optimum is not degenerate, on both sides. */
    @ParameterizedTest
    @MethodSource("casesWithDuals")
    void a_little_more_of_a_row_costs_its_dual(JsonNode given) {
        for (JsonNode row : given.get("rows")) {
            String name = row.get("name").asText();
            double dual =
                    Double.parseDouble(given.at("/expected/duals").path(name).asText("0"));
            double right =
                    Double.parseDouble((row.path("lower").isNull() ? row.get("upper") : row.get("lower")).asText());
            double little = 1e-4 * Math.max(1, Math.abs(right));

            double more = cost(given, name, little);
            double less = cost(given, name, -little);
            double as = cost(given, name, 0);

            assertThat((more - as) / little)
                    .as("%s, more", name)
                    .isCloseTo(dual, within(1e-5 * Math.max(1, Math.abs(dual))));
            assertThat((as - less) / little)
                    .as("%s, less", name)
                    .isCloseTo(dual, within(1e-5 * Math.max(1, Math.abs(dual))));
        }
    }

    /** The optimum with one row's right-hand side moved. */
    private static double cost(JsonNode given, String row, double moved) {
        MipModel model = PublishedModels.model(given, new HashMap<>(), row, moved);
        double cost = BranchAndBound.plain(model, Double.POSITIVE_INFINITY, () -> false)
                .search()
                .cost();
        return PublishedModels.maximises(given) ? -cost : cost;
    }
}
