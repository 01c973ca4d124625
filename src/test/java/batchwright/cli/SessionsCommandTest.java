package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** plan --cooks on the starter files: four days in two sessions, of a few dishes, which is quickly planned. */
class SessionsCommandTest {
    @TempDir
    Path here;

    private Cli.Result plan(String... more) {
        List<String> args = new ArrayList<>(List.of(
                "plan",
                "parent-holding",
                "--days",
                "4",
                "--cooks",
                "2",
                "--cook",
                "lentil_ragu,chickpea_tagine",
                "--seconds",
                "8"));
        args.addAll(List.of(more));
        return Cli.in(here).run(args.toArray(String[]::new));
    }

    @Test
    void each_session_has_its_cooking_days_and_shopping() {
        Cli.Result result = plan();

        assertThat(result.code()).isIn(0, 4);
        assertThat(result.err()).isEmpty();
        assertThat(result.flat())
                .startsWith("4 days for Parent, holding, cooked on days 1, 3: ")
                .containsSubsequence(
                        "SESSION 1 of 2: cook on day 1, 2026-11-25, for days 1-2; shop for ",
                        " COOK: ",
                        " DAYS: ",
                        " day 2 ",
                        " BUY: ",
                        "SESSION 2 of 2: cook on day 3, 2026-11-27, for days 3-4; shop for ",
                        " COOK: ",
                        " DAYS: ",
                        " day 4 ",
                        " BUY: ",
                        "perishable in foods/catalogue.csv",
                        "ALL SESSIONS",
                        " NUTRIENTS: ",
                        " PROOF ",
                        "checks passed.",
                        " CAUTIONS ");
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void shopping_once_is_one_list_that_says_what_does_not_keep() {
        Cli.Result result = plan("--shop", "once");

        assertThat(result.flat())
                .containsSubsequence("BUY, all of it before day 1: ", "SESSION 1 of 2", "SESSION 2 of 2")
                .contains("Freeze raw meat and fish on day 1")
                .doesNotContain("shop for");
        assertThat(result.out().split("(?m)^BUY", -1)).hasSize(2);
        assertThat(result.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void a_report_holds_all_sessions() {
        Cli.Result result = plan("--report", "plan.html");

        assertThat(result.code()).isIn(0, 4);
        assertThat(result.err()).isEqualTo("Wrote plan.html\n");
        assertThat(here.resolve("plan.html")).content().contains("id=\"labels-1\"", "id=\"labels-2\"");
    }

    @Test
    void json_holds_the_whole_and_each_session() {
        JsonNode plan = Shape.parse(plan("--json").out());

        assertThat(plan.get("schema").textValue()).isEqualTo("batchwright.plan/1");
        assertThat(plan.get("cooks").intValue()).isEqualTo(2);
        assertThat(plan.get("days").intValue()).isEqualTo(4);
        assertThat(plan.at("/eaters/0/days").findValuesAsText("day")).containsExactly("1", "2", "3", "4");
        assertThat(plan.at("/eaters/0/nutrients")).hasSize(18);
        assertThat(plan.at("/audit/passed").booleanValue()).isTrue();
        JsonNode sessions = plan.get("sessions");
        assertThat(sessions).hasSize(2);
        assertThat(sessions.get(1).get("first_day").intValue()).isEqualTo(3);
        assertThat(sessions.get(1).get("last_day").intValue()).isEqualTo(4);
        assertThat(sessions.get(1).get("cooking_day").textValue()).isEqualTo("2026-11-27");
        assertThat(sessions.get(1).at("/eaters/0/days").findValuesAsText("day")).containsExactly("1", "2");
        long cost = 0;
        int batches = 0;
        for (JsonNode session : sessions) {
            cost += session.get("cost_minor").longValue();
            batches += session.get("batches").size();
            assertThat(session.at("/audit/passed").booleanValue()).isTrue();
        }
        assertThat(plan.get("cost_minor").longValue()).isEqualTo(cost);
        assertThat(plan.at("/proof/cost_minor").longValue()).isEqualTo(cost);
        assertThat(plan.at("/proof/lower_bound_minor").longValue()).isLessThanOrEqualTo(cost);
        assertThat(plan.get("batches")).hasSize(batches);
        long lines = 0;
        for (JsonNode line : plan.get("shopping")) {
            lines += line.get("cost_minor").longValue();
            assertThat(line.get("session").intValue()).isBetween(1, 2);
        }
        assertThat(lines).isEqualTo(cost);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        --cooks 3 --days 2      | --cooks cannot be "3" for 2 days
        --cooks 0               | --cooks cannot be "0"
        --cooks 9 --days 20     | from 1 to 8
        --cooks 2 --shop never  | --shop cannot be "never"
        --shop once             | --shop is about several cooking sessions
        --vary                  | --vary is about several cooking sessions
        """)
    void a_wrong_question_is_refused(String options, String says) {
        Cli.Result result = Cli.in(here).run(("plan parent-holding " + options).split(" +", -1));

        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains(says);
    }
}
