package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Six weeks of weighings in a book, needs with them, and a step that is adopted. */
class WeighingsStoryTest {
    private static final String EATER = "desk-cutting";
    private static final LocalDate FIRST = LocalDate.of(2026, 10, 5);
    private static final int DAYS = 42;

    @TempDir
    Path here;

    private Cli.Result run(LocalDate day, String... words) {
        String[] all = java.util.Arrays.copyOf(words, words.length + 2);
        all[words.length] = "--date";
        all[words.length + 1] = day.toString();
        return Cli.in(here).run(all);
    }

    private JsonNode needs(LocalDate day) {
        return Shape.parse(run(day, "needs", EATER, "--json").out());
    }

    private static int aim(JsonNode needs) {
        return needs.get("targets").get("energy_kcal").get("aim").asInt();
    }

    /** Weight stands still at the target of a loss. */
    private void writeBook(double kg, int kcal) throws IOException {
        var random = new Random(3);
        var lines = new StringBuilder(Files.readString(here.resolve("profiles/book.txt")));
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = FIRST.plusDays(i);
            lines.append(String.format(
                    Locale.ROOT, "%s weighed %s %.1f kg%n", day, EATER, kg + 0.3 * random.nextGaussian()));
            lines.append(String.format(Locale.ROOT, "%s ate %s 500 g oats, %d kcal%n", day, EATER, kcal));
            lines.append(String.format(Locale.ROOT, "%s ate %s nothing else%n", day, EATER));
        }
        Files.writeString(here.resolve("profiles/book.txt"), lines.toString());
    }

    @Test
    void the_target_learns_when_the_person_says_so() throws IOException {
        Folders.starter(here);
        LocalDate today = FIRST.plusDays(DAYS);
        JsonNode before = needs(today);
        assertThat(before.has("weighings")).isFalse();
        double kg = Shape.parse(
                        run(today, "needs", EATER, "--weeks", "1", "--json").out())
                .get("projection")
                .get("path")
                .get(0)
                .get("likely")
                .get("weight_kg")
                .asDouble();
        assertThat(run(FIRST, "book", "weighed", EATER, kg + "kg").code()).isZero();
        Files.writeString(
                here.resolve("profiles/book.txt"),
                Files.readAllLines(here.resolve("profiles/book.txt")).get(0) + "\n");
        writeBook(kg, aim(before));

        JsonNode offered = needs(today);
        assertThat(aim(offered)).isEqualTo(aim(before));
        assertThat(offered.get("weighings").get("advice").get("status").asText())
                .isEqualTo("offer");
        String text = run(today, "needs", EATER).out();
        assertThat(text).contains("What your weighings say", "A step is offered");

        Cli.Result typed = run(today, "book", "adopted", EATER, "3150", "kcal");
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("the step that is offered to desk-cutting is to", "--sure");
        assertThat(run(today, "book", "adopted", "lifter-gaining", "3150", "kcal")
                        .err())
                .contains("nothing in the book says that lifter-gaining needs another target");

        assertThat(run(today, "needs", EATER, "--adopt").code()).isZero();
        JsonNode after = needs(today);
        assertThat(aim(after))
                .as("the offer is worked out at the present weight, needs at that of the profile")
                .isCloseTo(offered.get("weighings").get("advice").get("to_kcal").asInt(), within(10));
        assertThat(after.get("weighings").get("advice").get("reason").asText()).isEqualTo("changed_lately");
        assertThat(Files.readString(here.resolve("profiles/book.txt"))).contains(today + " adopted " + EATER);

        Cli.Result again = run(today, "needs", EATER, "--adopt");
        assertThat(again.code()).isEqualTo(2);
        assertThat(run(today, "book", "adopted", EATER, "2000", "kcal").err()).contains("no step is offered");
        Cli.Result page = run(today, "needs", EATER, "--report", "mine.html");
        assertThat(page.code()).isZero();
        assertThat(Files.readString(here.resolve("mine.html"))).contains("What your weighings say", "<svg");
        assertThat(run(today, "needs", EATER, "--report", "mine.txt").err()).contains("does not end in .html");
        assertThat(again.err()).contains("there is no step to adopt");
    }
}
