package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.MakePlan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How wide the text of a plan is, and in which characters. */
class LookTest {
    private static final String[] PLAN = {"plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu"};

    @TempDir
    Path here;

    private static String[] plan(String... more) {
        String[] args = Arrays.copyOf(PLAN, PLAN.length + more.length);
        System.arraycopy(more, 0, args, PLAN.length, more.length);
        return args;
    }

    @ParameterizedTest
    @ValueSource(ints = {80, 100, 120, 140, 200})
    void no_line_is_wider_than_asked_and_figures_stay(int width) {
        Cli.Result wide = Cli.in(here).run(plan("--width", "" + width));
        Cli.Result usual = Cli.in(here).run(plan());

        assertThat(wide.out().lines()).allMatch(line -> line.length() <= width);
        assertThat(wide.out()).matches("\\p{ASCII}*").doesNotContain("\u001b");
        assertThat(wide.out().lines().count())
                .isLessThanOrEqualTo(usual.out().lines().count());
        for (String heading : new String[] {"COOK: ", "ORDER OF WORK: ", "DAYS: ", "BUY: "}) {
            assertThat(wide.out().lines().filter(l -> l.startsWith(heading)))
                    .isEqualTo(usual.out()
                            .lines()
                            .filter(l -> l.startsWith(heading))
                            .toList())
                    .hasSize(1);
        }
        if (width == 80) {
            assertThat(wide.out()).isEqualTo(usual.out());
        }
    }

    @Test
    void a_wide_page_shows_where_the_energy_of_each_day_lies() {
        assertThat(Cli.in(here).run(plan("--width", "100")).out().lines())
                .filteredOn(line -> line.matches("  day \\d .*\\[-*\\*-*:?-*\\*?-*] .*"))
                .hasSize(2);
        assertThat(Cli.in(here).run(plan()).out()).doesNotContain("[-");
    }

    @ParameterizedTest
    @CsvSource({"40, 80", "80, 80", "100, 100", "139, 139", "250, 140", ", 80"})
    void unasked_it_is_as_wide_as_the_terminal_within_reason(Integer terminal, int width) {
        OptionalInt columns = terminal == null ? OptionalInt.empty() : OptionalInt.of(terminal);

        assertThat(LookOptions.ofTerminal(columns)).isEqualTo(width);
    }

    @Test
    void the_environment_goes_before_the_terminal() {
        assertThat(Screen.columns("100", "140")).hasValue(100);
        assertThat(Screen.columns(null, "140")).hasValue(140);
        assertThat(Screen.columns("many", "140")).hasValue(140);
        assertThat(Screen.columns(null, "")).isEmpty();
        assertThat(Screen.columns(null, "0")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"59", "201", "wide", "-80"})
    void other_widths_are_refused(String width) {
        assertThat(Cli.in(here).run(plan("--width=" + width)))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("from 60 to 200"));
    }

    @Test
    void names_come_in_ascii_when_asked_and_as_they_are_otherwise() throws IOException {
        Folders.starter(here);
        Folders.replace(here.resolve("profiles/parent-holding.yaml"), "Parent, holding", "Zoë \uD83C\uDF72");

        assertThat(Cli.in(here).run(plan()).out()).startsWith("2 days for Zoë \uD83C\uDF72: ");
        assertThat(Cli.in(here).run(plan("--ascii")).out())
                .startsWith("2 days for Zoe ?: ")
                .matches("(?s)\\p{ASCII}*");
        assertThat(Cli.in(here).run(plan("--ascii", "--json")).out()).contains("parent-holding");
        Folders.replace(here.resolve("profiles/parent-holding.yaml"), "goal: hold", "goal: hölder");
        assertThat(Cli.in(here).run(plan("--ascii")).err()).contains("holder").matches("(?s)\\p{ASCII}*");
    }

    @Test
    void a_terminal_that_shows_only_ascii_gets_it_unasked() {
        var out = new ByteArrayOutputStream();
        var stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        var terminal = new Terminal(
                new AnswerStream(stream, () -> false),
                stream,
                Optional.empty(),
                () -> true,
                () -> OptionalInt.of(80),
                true);
        Main.run(new String[] {"foods", "crème"}, terminal, new MakePlan(), here, Clock.systemUTC());

        assertThat(out.toString(StandardCharsets.UTF_8)).contains("creme").matches("(?s)\\p{ASCII}*");
    }
}
