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

    @Test
    void a_plan_names_the_evening_before_and_the_minutes() {
        String plan = run(PLAN).flat();

        assertThat(plan)
                .contains("(chickpea_tagine): ", "(turkey_chili): ")
                .contains("The evening before: Rinse the chickpeas and soak them")
                .containsPattern("Takes \\d+ minutes one step after another, \\d+ of them hands on\\.")
                .contains("Into step 5: 440 g couscous.", "Wash up")
                .doesNotContain("written for about 5 containers");
    }

    private JsonNode planned() {
        String[] json = Arrays.copyOf(PLAN, PLAN.length + 1);
        json[PLAN.length] = "--json";
        return Shape.parse(run(json).out());
    }

    /** What a batch takes is what its steps take in the schedule, and nowhere are other minutes. */
    @Test
    void a_script_reads_the_same() {
        JsonNode plan = planned();
        String text = run(PLAN).flat();

        for (JsonNode batch : plan.get("batches")) {
            boolean tagine = batch.get("dish").textValue().equals("chickpea_tagine");
            assertThat(batch.get("day_before")).hasSize(tagine ? 1 : 0);
            int minutes = 0;
            int hands = 0;
            for (JsonNode step : plan.get("schedule").get("steps")) {
                if (step.get("dish").equals(batch.get("dish"))) {
                    minutes += minutes(step, "end");
                    hands += minutes(step, "hands_on_until");
                }
            }
            assertThat(batch.get("minutes").intValue()).isEqualTo(minutes);
            assertThat(batch.get("hands_on_minutes").intValue()).isEqualTo(hands);
            assertThat(text)
                    .contains("Takes " + minutes + " minutes one step after another, " + hands + " of them hands on.");
        }
        assertThat(plan.get("batches")).hasSize(2);
    }

    private static int minutes(JsonNode step, String until) {
        return step.get(until).intValue() - step.get("start").intValue();
    }

    /**
     * On paper, for 341 g of chickpeas, 440 g of couscous and four and two boxes: chickpeas 1.5 + 18 x 0.341 / 1.2 + 75 = 81.6; couscous
     * 2 + 0.44 and 7 by itself; filling 1 + 4 x (0.4 + 2 x 0.4) = 5.8, and 1 + 2 x (0.4 + 3 x 0.4) = 4.2.
     */
    @Test
    void the_minutes_are_those_of_the_laws() {
        JsonNode steps = planned().get("schedule").get("steps");

        assertThat(minutes(step(steps, "chickpea_tagine", "Drain the chickpeas"), "end"))
                .isEqualTo(82);
        assertThat(minutes(step(steps, "chickpea_tagine", "Pour boiling"), "hands_on_until"))
                .isEqualTo(3);
        assertThat(minutes(step(steps, "chickpea_tagine", "Pour boiling"), "end"))
                .isEqualTo(10);
        assertThat(minutes(step(steps, "chickpea_tagine", "Fill the 4"), "end")).isEqualTo(6);
        assertThat(minutes(step(steps, "turkey_chili", "Fill the 2"), "end")).isEqualTo(5);
    }

    private static JsonNode step(JsonNode steps, String dish, String text) {
        for (JsonNode step : steps) {
            if (step.get("dish").asText().equals(dish)
                    && step.get("do").asText().startsWith(text)) {
                return step;
            }
        }
        throw new AssertionError(text);
    }

    @Test
    void a_plan_has_the_order_of_work_by_the_clock() {
        String plan = run(PLAN).out();
        JsonNode schedule = planned().get("schedule");

        assertThat(run(PLAN).flat()).contains("ORDER OF WORK: about ", "no order takes less");
        assertThat(plan)
                .contains("Turn the oven to 220 C.")
                .contains("almonds       -         -  left out")
                .doesNotContain("Toast the almonds", "Grate the cheddar");
        assertThat(schedule.get("proven_shortest").booleanValue()).isTrue();
        assertThat(schedule.get("minutes")).isEqualTo(schedule.get("lower_bound_minutes"));
        assertThat(schedule.get("steps"))
                .as("nine steps, filling and washing up of each dish")
                .hasSize(13);
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
                .contains("one step after another", " pans of about ", " pots of about ", "2 at a time");
        assertThat(run("dishes", "chickpea_tagine").flat())
                .contains(
                        "minutes one step after another",
                        "(3 min, the evening before)",
                        "burner, hands on; only with almonds");
    }
}
