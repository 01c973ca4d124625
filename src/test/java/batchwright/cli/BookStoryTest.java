package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.Golden;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Six days in a kitchen, command by command: the page docs/book-story.md is made of them. */
@Timeout(300)
class BookStoryTest {
    private static final String COOK = " --cook lentil_ragu,chickpea_tagine";
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path here;

    private final StringBuilder page = new StringBuilder("# A few days by the book\n");

    private void says(String text) {
        page.append('\n').append(text).append('\n');
    }

    /** Runs a command on a day and puts it on the page, with the first lines of its answer. */
    private Cli.Result run(String day, String command, int lines) {
        List<String> args = QUOTED.matcher(command + " --date " + day)
                .results()
                .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                .toList();
        Cli.Result result = Cli.in(here).run(args.toArray(new String[0]));
        List<String> shown =
                (result.out() + result.err()).replace(here + "/", "").lines().toList();
        page.append("\n```\n$ ").append(command).append(" --date ").append(day).append('\n');
        page.append(shown.stream().limit(lines).map(l -> l + "\n").collect(Collectors.joining()));
        page.append(shown.size() > lines ? "...\n" : "").append("```\n");
        return result;
    }

    private Cli.Result run(String day, String command) {
        return run(day, command, 40);
    }

    @Test
    void from_a_plan_to_the_next_one() throws IOException {
        Folders.starter(here);
        says(
                "One cook, one eater. Every command reads the folder it is started in; `--date` stands for the day on which it is"
                        + " typed, and can be left out. This page is made by a test, so each answer is what the program says.");

        says("## Sunday: plan, shop, cook, fill");
        assertThat(run("2026-11-29", "plan parent-holding --days 3 --keep" + COOK, 6)
                        .err())
                .contains("profiles/plans/2026-11-29.json");
        run("2026-11-29", "today");
        run("2026-11-29", "book bought list", 4);
        run("2026-11-29", "book cooked as planned");
        says(
                "The weight of the full pot says what goes into each container, with new labels; what they now hold is written:");
        JsonNode kept = Shape.parse(Files.readString(here.resolve("profiles/plans/2026-11-29.json")));
        String dish = kept.get("batches").get(0).get("dish").asText();
        Cli.Result pot = run(
                "2026-11-29",
                "book filled " + dish + " as planned --pot-with-lid 4.4kg --pot 1.9kg --label-pdf labels.pdf");
        assertThat(pot.err()).contains("Wrote labels.pdf: 1 sheet a4-2x7");
        run("2026-11-29", "book weighed parent-holding 68.4kg");
        run("2026-11-29", "book ate parent-holding as planned");

        says("## Monday: things go otherwise");
        run("2026-11-30", "today");
        run("2026-11-30", "book ate parent-holding " + dish);
        run("2026-11-30", "book ate parent-holding out 900 kcal");
        says("That was somebody else's line: a line is undone by another, and stays in the book.");
        run("2026-11-30", "book undo");
        run("2026-11-30", "book ate parent-holding out 700 kcal");
        run("2026-11-30", "book ate parent-holding nothing else");
        says("A slip is noticed before it is written:");
        Cli.Result pounds = run("2026-11-30", "book weighed parent-holding 151kg");
        assertThat(pounds.code()).isEqualTo(2);
        assertThat(pounds.err()).contains("it was 68.4 kg on 2026-11-29", "Is it in pounds?");
        run("2026-11-30", "book weighed parent-holding 150.6lb");

        says("## Tuesday: what is there, and the next plan");
        assertThat(run("2026-12-01", "today").out()).contains("In no plan: parent-holding: 1 x chickpea_tagine");
        run("2026-12-01", "book counted 300 g couscous");
        Cli.Result home = run("2026-12-01", "book", 22);
        says("The next plan eats first what is left, and takes what is at home:");
        Cli.Result next = run("2026-12-01", "plan parent-holding --days 4 --keep" + COOK, 12);

        assertThat(home.code()).isZero();
        assertThat(next.code()).isZero();
        assertThat(next.out()).contains("EAT FIRST: what is left makes 1 whole day");
        assertThat(next.err()).contains("profiles/plans/2026-12-02.json");
        assertThat(run("2026-12-01", "check").both()).isEmpty();
        assertThat(run("2026-12-01", "snack 250 --from-home", 3).code()).isZero();
        Golden.check(Path.of("docs/book-story.md"), page.toString());
    }
}
