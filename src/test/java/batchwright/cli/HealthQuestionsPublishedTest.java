package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.person.HealthQuestion;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What a yes to each question of health does to each goal, through the command line, beside a table that was typed apart. */
class HealthQuestionsPublishedTest {
    private static final String TABLE = "/published/health_questions.csv";
    private static final List<String> GOALS = List.of("lose 0.3 % a week", "hold", "gain 0.2 % a week");
    private static final List<String> FROM_MILD_TO_STRICT = List.of("plan", "warn", "ask", "refuse");

    @TempDir
    Path here;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void a_yes_does_what_the_table_says(
            String question, String lose, String hold, String gain, String listed, String source, String stricter) {
        assertThat(GOALS.stream().map(goal -> outcome(question, goal)).toList()).containsExactly(lose, hold, gain);
        assertThat(source).isNotBlank();
        if (listed != null) {
            isNeverMilder(List.of(lose, hold, gain), List.of(listed.split(" ")), stricter != null);
        }
    }

    private static void isNeverMilder(List<String> program, List<String> listed, boolean mayBeStricter) {
        for (int goal = 0; goal < GOALS.size(); goal++) {
            int more = FROM_MILD_TO_STRICT.indexOf(program.get(goal)) - FROM_MILD_TO_STRICT.indexOf(listed.get(goal));
            assertThat(more).isGreaterThanOrEqualTo(0);
            assertThat(more == 0 || mayBeStricter).as("stricter, with a reason").isTrue();
        }
    }

    /** What stops is refused unless the consent of whoever treats the eater lifts it. */
    private String outcome(String question, String goal) {
        Optional<Boolean> stops = stops(question + "=yes", goal);
        if (stops.isEmpty()) {
            return "plan";
        }
        if (!stops.get()) {
            return "warn";
        }
        return stops(question + "=agreed", goal).orElseThrow() ? "refuse" : "ask";
    }

    /** Whether the caution of this question stops planning; empty when there is no such caution. */
    private Optional<Boolean> stops(String answer, String goal) {
        Cli.Result result = Cli.in(here)
                .run(
                        "needs",
                        "--sex",
                        "female",
                        "--age",
                        "40",
                        "--weight",
                        "75 kg",
                        "--height",
                        "170 cm",
                        "--activity",
                        "active",
                        "--goal",
                        goal,
                        "--avoid",
                        "wheat, gluten",
                        "--health",
                        "none",
                        "--health",
                        answer,
                        "--json");
        JsonNode needs = Shape.parse(result.out());
        String code = answer.substring(0, answer.indexOf('='));
        Optional<Boolean> stops = StreamSupport.stream(needs.get("cautions").spliterator(), false)
                .filter(caution -> caution.get("code").textValue().equals(code))
                .map(caution -> caution.get("stops_planning").booleanValue())
                .findFirst();
        assertThat(needs.get("targets").isNull()).isEqualTo(stops.orElse(false));
        return stops;
    }

    @Test
    void every_question_is_in_the_table() throws IOException {
        try (var in = HealthQuestionsPublishedTest.class.getResourceAsStream(TABLE)) {
            String table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(HealthQuestion.all())
                    .filteredOn(question -> !table.contains("\n" + question.key() + ","))
                    .isEmpty();
        }
    }

    /** Before the questions were told apart, one stood for insulin, tablets and the like; it is read on. */
    @Test
    void the_older_question_about_diabetes_is_read_on() throws IOException {
        Path profile = Folders.starter(here).resolve("profiles/desk-cutting.yaml");
        Folders.replace(profile, "  sugar_or_weight_medicine: no", "  diabetes_medicine: no");
        Cli.Result no = Cli.in(here).run("needs", "desk-cutting");
        assertThat(no.flat()).contains("a medicine that ends in -gliflozin, a GLP-1 medicine. If one does");

        Folders.replace(profile, "  diabetes_medicine: no", "  diabetes_medicine: yes");
        assertThat(Cli.in(here).run("needs", "desk-cutting").flat())
                .contains("Something of this is said to apply, but not what: medicine for diabetes");

        Folders.replace(profile, "  diabetes_medicine: yes", "  diabetes_medicine: yes\n  metformin_or_gliptin: yes");
        assertThat(Cli.in(here).run("needs", "desk-cutting").flat())
                .contains("less medicine may be enough")
                .doesNotContain("but not what");
        assertThat(Files.readString(profile)).contains("organs: no");
    }
}
