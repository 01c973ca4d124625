package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How activity is said, listed and shown. */
class ActivityShownTest {
    private static final String DIARY = """
            activity: diary
            diary:
              sleeping: 8 h
              standing_work: 7 h 30 min
              walking: 1 h
              dressing: 45 min
              eating: 1.5 h
              sitting: 5 h 15 min
            """;

    @TempDir
    Path here;

    @BeforeEach
    void files() throws IOException {
        Folders.starter(here);
    }

    private void activity(String lines) throws IOException {
        Path profile = here.resolve("profiles/lifter-gaining.yaml");
        Files.writeString(profile, Files.readString(profile).replace("activity: active\n", lines));
    }

    private Cli.Result needs(String... more) {
        String[] args = new String[more.length + 2];
        args[0] = "needs";
        args[1] = "lifter-gaining";
        System.arraycopy(more, 0, args, 2, more.length);
        Cli.Result result = Cli.in(here).run(args);
        assertThat(result.code()).as(result.err()).isZero();
        return result;
    }

    @Test
    void the_list_has_all_that_a_profile_may_say() {
        String list = Cli.in(here).run("needs", "--activities").out();

        assertThat(list)
                .contains(
                        "activity: vigorous", "2.00 to 2.40", "activity: multiplier light", "1.375", "common practice");
        assertThat(list).containsPattern("\\n  sleeping +0\\.95  07030  sleeping\\n");
        assertThat(list.lines().filter(line -> line.matches("  [a-z0-9_]+ +[0-9.]+  \\d{5}  .*")))
                .hasSize(50);
    }

    @Test
    void the_list_in_json() {
        JsonNode list =
                Shape.parse(Cli.in(here).run("needs", "--activities", "--json").out());

        Shape.check(list, """
                {"schema": "=batchwright.activities/1",
                 "levels": [{"says": "text", "pal": "number", "pal_least": "number", "pal_most": "number"}],
                 "multipliers": [{"says": "text", "pal": "decimal", "meaning": "text"}],
                 "activities": [{"activity": "text", "code": "text", "met": "number", "name": "text"}]}
                """);
        assertThat(list.get("activities")).hasSize(50);
        assertThat(list.at("/activities/0/code").textValue()).isEqualTo("07030");
    }

    /** (8 x 0.95 + 7.5 x 3.0 + 3.5 + 0.75 x 2.5 + 1.5 x 1.5 + 5.25 x 1.3) / 24 = 44.55 / 24 = 1.856; 74 kg x 24 x 1.86 = 3303. */
    @Test
    void a_diary_is_shown_with_what_it_comes_to() throws IOException {
        activity(DIARY);
        String shown = needs().flat();

        assertThat(shown)
                .contains(
                        "PAL 1.86 (diary of a day)",
                        "7:30 3.0 light work on your feet",
                        "METs multiply your own resting");
        assertThat(shown).contains("By weight alone the same diary is 3303 kcal a day", "overstates heavy people");
        assertThat(needs().out().lines()).allMatch(line -> line.length() <= 80);

        JsonNode json = Shape.parse(needs("--json").out());
        assertThat(json.get("pal").decimalValue()).isEqualByComparingTo("1.86");
        assertThat(json.at("/activity/says").textValue()).isEqualTo("diary of a day");
        assertThat(json.at("/activity/diary")).hasSize(6);
        assertThat(json.at("/activity/diary/1/minutes").intValue()).isEqualTo(450);
    }

    @Test
    void a_multiplier_is_called_common_practice() throws IOException {
        activity("activity: multiplier light\n");

        assertThat(needs().flat())
                .contains(
                        "PAL 1.375 (multiplier light)", "common practice", "No study stands behind", "Under PAL 1.40");
        assertThat(Shape.parse(needs("--json").out()).at("/activity/pal").decimalValue())
                .isEqualByComparingTo("1.375");
    }

    /**
     * Rests on 1729 kcal with an SD of hypot(155.6, 63.9) = 168, and PAL 1.76 with one of hypot(0.176, 0.2) = 0.266: about 3042 x hypot(0.097,
     * 0.151) x 1.28 = 700 either way.
     */
    @Test
    void the_range_is_in_words_and_in_json() {
        assertThat(needs().flat())
                .contains(
                        "8 of 10 people of this description need between 2370 and 3750 kcal. Weigh yourself for some weeks and"
                                + " correct.");

        JsonNode json = Shape.parse(needs("--json").out());
        assertThat(json.at("/total_range_kcal/least").doubleValue()).isBetween(2365.0, 2375.0);
        assertThat(json.at("/total_range_kcal/most").doubleValue()).isBetween(3745.0, 3755.0);
        assertThat(json.at("/total_range_kcal/people_inside").doubleValue()).isEqualTo(0.8);
        assertThat(json.at("/second_opinion/equation").textValue()).startsWith("NASEM 2023");
        assertThat(json.at("/second_opinions/0")).isEqualTo(json.get("second_opinion"));
        assertThat(json.at("/second_opinions/1/equation").textValue()).startsWith("IOM 2005 EER");
    }

    @Test
    void a_projection_has_the_range_of_the_needs() {
        JsonNode json = Shape.parse(needs("--weeks", "4", "--json").out());

        assertThat(json.at("/projection/total_kcal/min")).isEqualTo(json.at("/total_range_kcal/least"));
        assertThat(json.at("/projection/total_kcal/max")).isEqualTo(json.at("/total_range_kcal/most"));
    }
}
