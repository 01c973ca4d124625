package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** needs EATER --weeks N */
class NeedsWeeksTest {
    @TempDir
    Path here;

    @BeforeEach
    void files() {
        Folders.starter(here);
    }

    private Cli.Result needs(String... more) {
        return ending(0, more);
    }

    /** Where planning stops. */
    private Cli.Result refused(String... more) {
        return ending(3, more);
    }

    private Cli.Result ending(int code, String... more) {
        String[] args = new String[1 + more.length];
        args[0] = "needs";
        System.arraycopy(more, 0, args, 1, more.length);
        Cli.Result result = Cli.in(here).run(args);
        assertThat(result.code()).as(result.err()).isEqualTo(code);
        assertThat(result.err()).isEmpty();
        return result;
    }

    private JsonNode json(String... args) {
        return Shape.parse(needs(args).out());
    }

    @ParameterizedTest
    @CsvSource({
        "lifter-gaining, 1",
        "lifter-gaining, 12",
        "desk-cutting, 12",
        "desk-cutting, 52",
        "desk-cutting, 104",
        "parent-holding, 26"
    })
    void is_plain_text_that_fits_a_terminal(String eater, String weeks) {
        String out = needs(eater, "--weeks", weeks).out();
        String projection = out.substring(out.indexOf("Where weight goes"), out.indexOf("Resting energy by"));

        assertThat(projection).contains("Where weight goes", weeks + " week", " as estimated", "lean");
        assertThat(projection.lines()).allMatch(line -> line.length() <= 80);
        assertThat(projection.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
    }

    @ParameterizedTest
    @CsvSource({
        "12, 0 1 2 3 4 5 6 7 8 9 10 11 12",
        "17, 0 2 4 6 8 10 12 14 16 17",
        "104, 0 8 16 24 32 40 48 56 64 72 80 88 96 104"
    })
    void the_table_always_ends_with_the_last_week(String weeks, String rows) {
        List<String> shown = needs("lifter-gaining", "--weeks", weeks)
                .out()
                .lines()
                .filter(line -> line.matches(" +(now|\\d+) +\\d+\\.\\d .*\\d"))
                .map(line -> line.strip().split(" ", 2)[0].replace("now", "0"))
                .toList();

        assertThat(String.join(" ", shown)).isEqualTo(rows);
    }

    @Test
    void json_keeps_its_contract() {
        JsonNode projection = json("parent-holding", "--weeks", "12", "--json").get("projection");

        Shape.check(projection, """
                {"weeks_asked": "whole", "weeks": "whole", "intake_kcal": "number",
                 "total_kcal": {"min": "number", "likely": "number", "max": "number"},
                 "starting_fat": {"percent": "number", "method": "=Deurenberg 1991", "error_points": "number", "source": "text"},
                 "path": [{"week": "whole",
                           "likely": {"weight_kg": "number", "fat_kg": "number", "lean_kg": "number"},
                           "lightest": {"weight_kg": "number", "fat_kg": "number", "lean_kg": "number"},
                           "heaviest": {"weight_kg": "number", "fat_kg": "number", "lean_kg": "number"}}],
                 "cautions": [{"code": "text", "text": "text", "stops_planning": "yes/no", "source": "text"}]}
                """);
        assertThat(projection.get("path")).hasSize(13);
        assertThat(json("lifter-gaining", "--weeks", "4", "--json")
                        .at("/projection/starting_fat/method")
                        .textValue())
                .isEqualTo("measured");
    }

    /** The starter who cuts eats the target's aim, from the body of the profile: 79 kg with 34 % fat. */
    @Test
    void starts_from_the_profile_and_eats_the_aim() {
        JsonNode needs = json("desk-cutting", "--weeks", "12", "--json");

        assertThat(needs.at("/projection/intake_kcal").intValue())
                .isEqualTo(needs.at("/targets/energy_kcal/aim").intValue());
        assertThat(needs.at("/projection/total_kcal/likely")).isEqualTo(needs.get("total_kcal"));
        assertThat(needs.at("/projection/path/0/likely/weight_kg").doubleValue())
                .isEqualTo(79);
        assertThat(needs.at("/projection/path/0/likely/fat_kg").doubleValue()).isEqualTo(26.86);
    }

    @Test
    void not_asked_for_is_not_there() {
        assertThat(json("lifter-gaining", "--json").has("projection")).isFalse();
        assertThat(needs("lifter-gaining").out()).doesNotContain("Where weight goes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"recent_surgery", "pregnant_or_breastfeeding", "kidney_disease", "diabetes_medicine"})
    void where_planning_stops_nothing_is_projected(String health) throws IOException {
        Folders.replace(here.resolve("profiles/desk-cutting.yaml"), "health:\n", "health:\n  " + health + ": yes\n");

        Cli.Result text = refused("desk-cutting", "--weeks", "12");
        assertThat(text.flat()).contains("Where weight goes No projection where planning stops.");
        assertThat(text.out()).doesNotContain("as estimated").doesNotContain("fat  lean");
        JsonNode needs =
                Shape.parse(refused("desk-cutting", "--weeks", "12", "--json").out());
        assertThat(needs.has("projection")).isTrue();
        assertThat(needs.get("projection").isNull()).isTrue();
    }

    @Test
    void a_projection_that_stops_says_so_and_why() throws IOException {
        Path profile = here.resolve("profiles/desk-cutting.yaml");
        Folders.replace(profile, "weight: 79 kg", "weight: 57 kg");
        Folders.replace(profile, "body_fat: 34 %", "body_fat: 25 %");
        Folders.replace(profile, "goal: lose 0.6 % a week", "goal: lose 0.4 % a week");

        Cli.Result text = needs("desk-cutting", "--weeks", "104");
        JsonNode projection = json("desk-cutting", "--weeks", "104", "--json").get("projection");

        assertThat(text.flat())
                .contains("The projection stops after week " + projection.get("weeks") + ", because in week")
                .containsPattern("body fat would be under \\d+ % of weight|the BMI would be under 18.5")
                .contains("A doctor or dietitian can help");
        assertThat(projection.get("weeks").intValue()).isBetween(1, 103);
        assertThat(projection.get("weeks_asked").intValue()).isEqualTo(104);
        assertThat(projection.get("stopped").textValue()).startsWith("The projection stops after week");
        // Before the chart, not below it.
        assertThat(text.out().indexOf("The projection stops"))
                .isLessThan(text.out().indexOf("    kg\n"));
    }

    @Test
    void who_is_too_lean_is_told_that_nothing_is_projected() throws IOException {
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        Folders.replace(profile, "body_fat: 15 %", "body_fat: 3 %");
        Folders.replace(profile, "goal: gain 0.25 % a week", "goal: lose 0.5 % a week");

        assertThat(refused("lifter-gaining", "--weeks", "12").flat()).contains("No projection where planning stops.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "desk-cutting"})
    void steps_are_a_short_table(String eater) {
        String out = needs(eater, "--stages").out();
        String steps = out.substring(out.indexOf("The target in steps"), out.indexOf("Body fat"));

        assertThat(steps.lines()).allMatch(line -> line.length() <= 80).hasSizeLessThan(20);
        assertThat(steps).contains("1-4 ", "21-24 ", "all along");
        JsonNode needs = json(eater, "--stages", "--json");
        Shape.check(needs.get("steps"), """
                {"list": [{"first_week": "whole", "last_week": "whole", "intake_kcal": "number", "weight_kg": "number",
                           "fat_kg": "number", "least_allowed": "yes/no", "weight_kg_at_first_intake": "number?"}],
                 "stopped": "text?"}
                """);
        assertThat(needs.at("/steps/list")).hasSize(6);
        assertThat(needs.at("/steps/list/0/intake_kcal").intValue())
                .isEqualTo(needs.at("/targets/energy_kcal/aim").intValue());
        Shape.check(needs.get("goal"), """
                {"by_rule_of_7700": {"kcal_per_day": "number", "kg_per_week": "number"},
                 "held": {"intake_kcal": "number", "kg_after_12_weeks": "number?", "kg_after_52_weeks": "number?",
                          "kg_in_the_end": "number?"}}
                """);
    }

    @Test
    void who_holds_the_weight_needs_no_steps() {
        assertThat(needs("parent-holding", "--stages").flat()).contains("Who holds the weight needs no steps.");
        assertThat(json("parent-holding", "--json").has("steps")).isFalse();
    }
}
