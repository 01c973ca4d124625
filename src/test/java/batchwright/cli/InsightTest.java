package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** --why and --frontier with starter eaters, one dish each so that plans are quick: what is printed, and the same in JSON. */
class InsightTest {
    private static final int COLUMNS = 80;

    @TempDir
    Path here;

    @BeforeEach
    void starter() {
        Folders.starter(here);
    }

    private Cli.Result plan(String eater, String... more) {
        String[] args = {"plan", eater, "--days", "2", "--cook", "lentil_ragu,turkey_chili", "--seconds", "8"};
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return Cli.in(here).run(all);
    }

    @Test
    void why() {
        Cli.Result text = plan("parent-holding", "--why");

        assertThat(text.code()).isZero();
        assertThat(text.out().lines()).allMatch(line -> line.length() <= COLUMNS);
        assertThat(text.out())
                .containsSubsequence(
                        "PROOF",
                        "WHY: what each rule costs, changed alone, in USD",
                        "WHY: protein and money",
                        "10 g more protein a day: ",
                        "1.00 USD more (",
                        "1.00 USD less (",
                        "WHY: foods that just missed",
                        "WHY: cost by food",
                        "per 1000",
                        "CAUTIONS");
    }

    @Test
    void second_opinion() {
        Cli.Result text = plan("parent-holding", "--second-opinion");

        assertThat(text.code()).isZero();
        assertThat(text.out().lines()).allMatch(line -> line.length() <= COLUMNS);
        assertThat(text.out()).containsSubsequence("PROOF", "SECOND OPINION: ojAlgo ", "CAUTIONS");
    }

    @Test
    void second_opinion_for_scripts() {
        JsonNode json =
                Shape.parse(plan("parent-holding", "--second-opinion", "--json").out());

        assertThat(json.at("/second_opinion/solver").asText()).isEqualTo("ojAlgo");
        assertThat(json.at("/second_opinion/verdict").asText()).isIn("agrees", "not_finished");
    }

    @Test
    void why_for_scripts() {
        JsonNode json = Shape.parse(plan("parent-holding", "--why", "--json").out());

        Shape.check(json, """
                {"why": {"rules": [{"rule": "text", "eater": "text?", "now": "text"}],
                         "protein": {"more": {"grams": "whole", "proven": "yes/no", "no_plan": "yes/no"},
                                     "for_more": {"money_minor": "whole", "proven": "yes/no"},
                                     "for_less": {"money_minor": "whole", "proven": "yes/no"}},
                         "just_missed_complete": "yes/no",
                         "items": [{"food": "text", "cost_minor": "whole", "share_percent": "number",
                                    "energy_kcal": "number", "minor_per_1000_kcal": "number?"}]}}
                """);
        long items = 0;
        for (JsonNode item : json.get("why").get("items")) {
            items += item.get("cost_minor").longValue();
        }
        assertThat(items).isEqualTo(json.get("cost_minor").longValue());
        for (JsonNode rule : json.get("why").get("rules")) {
            // A cost that is known is never below its bound, nor a loosened one above the plan's.
            for (String moved : List.of("looser", "tighter")) {
                JsonNode cost = rule.get(moved);
                if (cost.isObject() && cost.get("cost_minor").isNumber()) {
                    assertThat(cost.get("cost_minor").longValue())
                            .isGreaterThanOrEqualTo(
                                    cost.get("lower_bound_minor").longValue());
                }
            }
            if (rule.get("looser").isObject()) {
                assertThat(rule.get("looser").get("cost_minor").longValue())
                        .isLessThanOrEqualTo(json.get("cost_minor").longValue());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"protein", "energy", "budget"})
    void frontier(String against) {
        Cli.Result text = plan("parent-holding", "--frontier", against);
        JsonNode points = Shape.parse(
                        plan("parent-holding", "--frontier", against, "--json").out())
                .get("frontier")
                .get("points");

        assertThat(text.code()).isZero();
        assertThat(text.out().lines()).allMatch(line -> line.length() <= COLUMNS);
        assertThat(text.out()).contains("FRONTIER: ", "  now ", "#");
        assertThat(points).hasSizeBetween(2, 12);
        assertThat(points).filteredOn(p -> p.get("in_force").booleanValue()).hasSize(1);
    }

    @Test
    void nothing_is_found_out_unless_it_is_asked_for() {
        JsonNode json = Shape.parse(plan("parent-holding", "--json").out());

        assertThat(json.has("why")).isFalse();
        assertThat(json.has("frontier")).isFalse();
    }

    @Test
    void another_frontier_is_refused() {
        Cli.Result result = plan("parent-holding", "--frontier", "fat");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("--frontier cannot be \"fat\"", "protein, energy or budget");
    }

    @Test
    void several_sessions_are_refused() {
        Cli.Result result = plan("parent-holding", "--cooks", "2", "--why");

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("--why, --frontier and --second-opinion do not go with --cooks");
    }
}
