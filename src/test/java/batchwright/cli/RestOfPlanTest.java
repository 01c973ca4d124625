package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** plan --rest: the days that are left of a kept plan, with the containers that are left. */
@Timeout(300)
class RestOfPlanTest {
    private static final String EATER = "parent-holding";
    private static final String COOK = " --cook chickpea_tagine";

    @TempDir
    Path here;

    @BeforeEach
    void two_of_four_days() throws IOException {
        Folders.starter(here);
        Folders.replace(
                here.resolve("profiles/parent-holding.yaml"),
                "avoid: [peanut]",
                "avoid: [peanut]\nsnacks:\n  only: [banana, whole_milk, almonds]");
        run("2026-11-29", "plan parent-holding --days 4 --keep" + COOK);
        run("2026-11-29", "book bought list");
        run("2026-11-29", "book cooked as planned");
        run("2026-11-29", "book filled as planned");
        run("2026-11-29", "book ate parent-holding as planned");
        run("2026-11-30", "book ate parent-holding as planned");
    }

    private Cli.Result run(String day, String command) {
        return Cli.in(here).run((command + " --date " + day).split(" "));
    }

    private JsonNode rest(String more) {
        Cli.Result result = run("2026-12-01", "plan " + EATER + " --rest --json" + COOK + more);
        assertThat(result.code()).as(result.err()).isZero();
        return Shape.parse(result.out());
    }

    private static int containers(JsonNode plan, int day) {
        int all = 0;
        for (JsonNode box : plan.get("eaters").get(0).get("days").get(day).get("containers")) {
            all += box.path("left").asBoolean() ? box.get("count").asInt() : 0;
        }
        return all;
    }

    @Test
    void as_nothing_happened_nothing_is_cooked_and_no_day_changes() {
        JsonNode plan = rest(" --keep-containers");

        assertThat(plan.get("days").asInt()).isEqualTo(2);
        assertThat(plan.get("batches")).isEmpty();
        assertThat(plan.get("cost_minor").asInt()).isZero();
        assertThat(plan.get("rest").get("changed_days").asInt()).isZero();
        assertThat(containers(plan, 0)).isEqualTo(2);
        assertThat(containers(plan, 1)).isEqualTo(2);
    }

    @Test
    void for_a_container_that_is_gone_and_one_for_a_guest_two_are_cooked() {
        assertThat(run("2026-12-01", "book threw away 1 chickpea_tagine of " + EATER)
                        .code())
                .isZero();
        JsonNode plan = rest(" --keep-containers --guest tomorrow --keep");

        assertThat(plan.get("batches").get(0).get("containers").asInt()).isEqualTo(2);
        assertThat(plan.get("rest").get("guests").get(0).get("date").asText()).isEqualTo("2026-12-02");
        assertThat(containers(plan, 0) + containers(plan, 1)).isEqualTo(2);
        assertThat(run("2026-12-01", "book filled as planned").code()).isZero();
        assertThat(run("2026-12-01", "book ate parent-holding as planned").code())
                .isZero();
    }

    @Test
    void what_was_eaten_today_leaves_tomorrow() {
        run("2026-12-01", "book ate parent-holding chickpea_tagine");
        run("2026-12-01", "book ate parent-holding out 900 kcal");
        JsonNode plan = rest("");

        assertThat(plan.get("cooking_day").asText()).isEqualTo("2026-12-02");
        assertThat(plan.get("days").asInt()).isEqualTo(1);
        assertThat(plan.get("left_besides").get(0).get("count").asInt()).isEqualTo(1);
    }

    @Test
    void what_does_not_go_together_is_refused() {
        assertThat(run("2026-12-01", "plan parent-holding --guest today").err()).contains("--rest");
        assertThat(run("2026-12-01", "plan parent-holding --rest --days 3").err())
                .contains("--days");
        assertThat(run("2026-12-01", "plan parent-holding --rest --guest 2026-12-09")
                        .err())
                .contains("a guest cannot come on 2026-12-09");
        assertThat(run("2026-12-09", "plan parent-holding --rest").err()).contains("no plan was kept");
        assertThat(run("2026-12-01", "plan parent-holding --rest --why").err()).contains("--why");
    }

    @Test
    void last_time_by_the_book() {
        assertThat(run("2026-11-28", "plan parent-holding --days 1 --last-time book")
                        .err())
                .contains("no plan was kept before");
        assertThat(run("2026-12-03", "plan parent-holding --days 1 --last-time book" + COOK)
                        .code())
                .isZero();
    }
}
