package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.MakePlan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import batchwright.plan.Proof;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Help leads with two examples that work, and lists options and exit codes. */
class HelpTest {
    private static final String PROGRAM = "java -jar target/batchwright.jar ";

    @TempDir
    Path here;

    /** Answers at once, so that the examples of plan can be run. */
    private static final class Hasty implements Planner {
        @Override
        public PlanResult plan(PlanRequest request) {
            return new PlanResult.GaveUp(Optional.empty(), Proof.NONE);
        }

        @Override
        public Possible possible(PlanRequest request) {
            return Possible.UNKNOWN;
        }
    }

    private static List<String> examples(String help) {
        return help.lines()
                .map(String::strip)
                .filter(l -> l.startsWith(PROGRAM) && !l.contains("COMMAND"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"needs", "plan", "snack", "dishes", "foods", "book", "today", "check", "init"})
    void help_of_every_command(String command) {
        Cli.Result help = Cli.in(here).run(command, "--help");

        assertThat(help.code()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).isEqualTo(Cli.in(here).run("help", command).out());
        assertThat(help.out()).isEqualTo(Cli.in(here).run(command, "-h").out());
        assertThat(help.out().indexOf("Examples:")).isBetween(0, help.out().indexOf("Options:"));
        assertThat(help.out()).contains("--json", "--data", "--debug", "--help", "Exit codes:");
        assertThat(help.out().substring(help.out().indexOf("Exit codes:")))
                .containsSubsequence("  0 ", "  1 ", "  2 ", "  3 ", "  4 ", "  130 ");
        assertThat(help.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(examples(help.out())).hasSize(2).allMatch(e -> e.startsWith(PROGRAM + command));
        for (String example : examples(help.out())) {
            String[] args = example.substring(PROGRAM.length()).split(" ", -1);
            Cli.Result result = Cli.in(here, new MakePlan(new Hasty())).run(args);
            assertThat(result.code()).as(example + "\n" + result.err()).isIn(0, 4);
            assertThat(result.err()).isEmpty();
        }
    }

    @Test
    void nothing_named_gives_a_short_help_with_two_examples() {
        Cli.Result result = Cli.in(here).run();

        assertThat(result.code()).isZero();
        assertThat(examples(result.out())).hasSize(2);
        assertThat(result.out().lines().count()).isLessThan(20);
        assertThat(result.out())
                .contains("needs", "plan", "snack", "dishes", "foods", "book", "today", "check", "init");
    }

    @Test
    void version_says_the_name_and_what_the_jar_knows() {
        Cli.Result result = Cli.in(here).run("--version");

        assertThat(result.code()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.out()).isEqualTo("batchwright (not packed)" + System.lineSeparator());
    }

    @Test
    void help_of_the_program() {
        Cli.Result result = Cli.in(here).run("--help");

        assertThat(result.code()).isZero();
        assertThat(examples(result.out())).hasSize(2);
        assertThat(result.out()).contains("Commands:", "Exit codes:");
        assertThat(Cli.in(here).run("help").out()).isEqualTo(result.out());
    }

    @Test
    void common_options_may_stand_before_or_after_the_command() {
        String after = Cli.in(here).run("check", "--json").out();

        assertThat(Cli.in(here).run("--json", "check").out()).isEqualTo(after);
    }
}
