package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan says of the work: the evening before, minutes, and the commands to go on with. */
class WorkShownTest {
    private static final String[] PLAN = {
        "plan", "lifter-gaining", "--days", "2", "--cook", "chickpea_tagine,turkey_chili", "--date", "2026-11-25"
    };

    @TempDir
    Path here;

    private Cli.Result run(String... args) {
        return Cli.in(here).run(args);
    }

    /**
     * Minutes added up by hand from the steps: tagine 70 + 15 + 30 + 8, chili 14 + 30 + 8 + 20 + 2; hands on 2 + 15 + 2, and
     * 14 + 2 + 8 + 2. The almonds (6, hands on) and the cheddar (3, hands on) are left out, and so are their steps.
     */
    @Test
    void a_plan_names_the_evening_before_and_the_minutes() {
        String plan = run(PLAN).flat();

        assertThat(plan)
                .contains("(chickpea_tagine): ", "(turkey_chili): ")
                .containsOnlyOnce("The evening before: Rinse the chickpeas and soak them")
                .contains("Takes 123 minutes one step after another, 19 of them hands on.")
                .contains("Takes 74 minutes one step after another, 26 of them hands on.")
                .contains("meant for about 5 containers of a dish.");
    }

    @Test
    void a_script_reads_the_same() {
        String[] json = Arrays.copyOf(PLAN, PLAN.length + 1);
        json[PLAN.length] = "--json";
        JsonNode batches = Shape.parse(run(json).out()).get("batches");

        for (JsonNode batch : batches) {
            boolean tagine = batch.get("dish").textValue().equals("chickpea_tagine");
            assertThat(batch.get("day_before")).hasSize(tagine ? 1 : 0);
            assertThat(batch.get("minutes").intValue()).isEqualTo(tagine ? 123 : 74);
            assertThat(batch.get("hands_on_minutes").intValue()).isEqualTo(tagine ? 19 : 26);
        }
        assertThat(batches).hasSize(2);
    }

    @Test
    void a_plan_has_the_order_of_work_by_the_clock() {
        String plan = run(PLAN).out();
        String[] json = Arrays.copyOf(PLAN, PLAN.length + 1);
        json[PLAN.length] = "--json";
        JsonNode schedule = Shape.parse(run(json).out()).get("schedule");

        assertThat(plan)
                .contains("ORDER OF WORK: about ", "no order takes less", "Turn the oven to 220 C.")
                .contains("almonds       -         -  left out")
                .doesNotContain("Toast the almonds", "Grate the cheddar");
        assertThat(schedule.get("proven_shortest").booleanValue()).isTrue();
        assertThat(schedule.get("minutes")).isEqualTo(schedule.get("lower_bound_minutes"));
        assertThat(schedule.get("steps")).hasSize(11);
        int handsFree = 0;
        for (JsonNode step : schedule.get("steps")) {
            if (step.get("hands_on_until").intValue() > step.get("start").intValue()) {
                assertThat(step.get("start").intValue()).isGreaterThanOrEqualTo(handsFree);
                handsFree = step.get("hands_on_until").intValue();
            }
            assertThat(step.get("end").intValue())
                    .isLessThanOrEqualTo(schedule.get("minutes").intValue());
        }
    }

    @Test
    void next_names_every_dish_and_keeps_folder_and_day() {
        Folders.starter(here.resolve("my kitchen"));
        String[] args = Arrays.copyOf(PLAN, PLAN.length + 2);
        args[PLAN.length] = "--data";
        args[PLAN.length + 1] = "my kitchen";

        assertThat(run(PLAN).flat())
                .contains("Next: dishes chickpea_tagine --date 2026-11-25 and dishes turkey_chili --date 2026-11-25"
                        + " show how to cook them.");
        assertThat(run(args).flat())
                .contains("Next: dishes chickpea_tagine --data \"my kitchen\" --date 2026-11-25 and");
        assertThat(run("dishes", "lentil_ragu", "--kcal", "3000", "--data", "my kitchen")
                        .flat())
                .containsPattern("Try: dishes lentil_ragu [^:]*--data \"my kitchen\"");
    }

    @Test
    void many_containers_take_longer() {
        assertThat(run("dishes", "beef_goulash", "--kcal", "700", "--containers", "60")
                        .flat())
                .contains("one step after another", "about 5 containers of a dish: more take longer");
        assertThat(run("dishes", "chickpea_tagine").flat())
                .contains(
                        "Steps: 129 minutes one step after another",
                        "(3 min, the evening before)",
                        "(6 min, burner, only with almonds)");
    }
}
