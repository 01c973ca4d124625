package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With an eating disorder, now or in the past, nobody is shown a figure: only the way to help. */
class FiguresHiddenTest {
    @TempDir
    Path here;

    private Path profile;

    @BeforeEach
    void files() {
        profile = Folders.starter(here).resolve("profiles/desk-cutting.yaml");
    }

    private void sayYes() throws IOException {
        Folders.replace(profile, "health:\n", "health:\n  eating_disorder: yes\n");
    }

    private String out(String... args) {
        return Cli.in(here).run(args).out();
    }

    @Test
    void needs_shows_the_way_to_help_and_no_figure() throws IOException {
        assertThat(out("needs", "desk-cutting")).contains("kcal", "BMI").containsPattern("\\d");
        sayYes();
        for (String[] args : List.of(
                new String[] {"needs", "desk-cutting"}, new String[] {"needs", "desk-cutting", "--weeks", "12"})) {
            assertThat(out(args))
                    .startsWith("Desk worker, cutting: no figures and no plan here")
                    .contains("ask your doctor", "eating-disorder service")
                    .doesNotContainPattern("\\d")
                    .doesNotContain("kcal", "BMI", "target", "protein", "deficit");
        }
    }

    @Test
    void plan_shows_none_either() throws IOException {
        sayYes();
        assertThat(out("plan", "desk-cutting"))
                .startsWith("No plan for Desk worker, cutting")
                .doesNotContainPattern("\\d")
                .doesNotContain("kcal", "BMI", "target", "protein", "deficit");
        JsonNode eater = Shape.parse(out("plan", "desk-cutting", "--json")).at("/eaters/0");
        assertThat(eater.get("targets").isNull()).isTrue();
        assertThat(eater.get("days")).isEmpty();
        assertThat(eater.get("nutrients")).isEmpty();
    }

    @Test
    void json_keeps_its_names_and_loses_its_values() throws IOException {
        JsonNode before = Shape.parse(out("needs", "desk-cutting", "--weeks", "12", "--json"));
        sayYes();
        JsonNode after = Shape.parse(out("needs", "desk-cutting", "--weeks", "12", "--json"));

        assertThat(before.get("figures_hidden").booleanValue()).isFalse();
        assertThat(after.get("figures_hidden").booleanValue()).isTrue();
        assertThat(after.properties().stream().map(Map.Entry::getKey))
                .containsExactlyElementsOf(
                        before.properties().stream().map(Map.Entry::getKey).toList());
        assertThat(after.at("/cautions/0/code").textValue()).isEqualTo("eating_disorder");
        var rest = (ObjectNode) after;
        rest.remove(List.of("schema", "eater", "name", "figures_hidden", "cautions"));
        assertThat(rest).allSatisfy(FiguresHiddenTest::isBare);
    }

    private static void isBare(JsonNode value) {
        if (value instanceof ObjectNode object) {
            assertThat(object).allSatisfy(FiguresHiddenTest::isBare);
        } else if (value instanceof ArrayNode list) {
            assertThat(list).isEmpty();
        } else {
            assertThat(value.isNull()).as(value.toString()).isTrue();
        }
    }
}
