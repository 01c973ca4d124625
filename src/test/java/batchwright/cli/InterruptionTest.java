package batchwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C, as the terminal sends it: SIGINT to a process of its own. */
@EnabledOnOs(OS.LINUX)
@Timeout(120)
class InterruptionTest {
    @TempDir
    Path here;

    private record Ended(int code, String out, String err) {
        String flat() {
            return out.replaceAll("\\s+", " ");
        }
    }

    /** Waits until it searches, interrupts it so many times, and waits for its end. */
    private Ended interrupted(int times, SlowSearch.Kind kind, String... args) throws Exception {
        // A process that was started in the background may ignore the signal, and so would its children.
        List<String> program = List.of(
                "env",
                "--default-signal=INT",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                SlowSearch.class.getName(),
                kind.name());
        Process process = new ProcessBuilder(
                        Stream.concat(program.stream(), Stream.of(args)).toList())
                .directory(here.toFile())
                .redirectOutput(here.resolve("out").toFile())
                .start();
        var err = new BufferedReader(new InputStreamReader(process.getErrorStream(), UTF_8));
        String first = untilItSearches(err);
        for (int i = 0; i < times; i++) {
            Thread.sleep(1500); // long enough for a progress line
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                    .start()
                    .waitFor();
        }
        var rest = new StringWriter();
        err.transferTo(rest);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), Files.readString(here.resolve("out")), first + rest);
    }

    private static String untilItSearches(BufferedReader err) throws IOException {
        var read = new StringBuilder();
        String line = err.readLine();
        while (line != null) {
            read.append(line).append('\n');
            if (line.contains("searching")) {
                return read.toString();
            }
            line = err.readLine();
        }
        throw new AssertionError("it ended before it searched: " + read);
    }

    @Test
    void the_best_plan_so_far_is_shown_as_not_proven() throws Exception {
        Ended ended = interrupted(1, SlowSearch.Kind.WITH_A_PLAN, "plan", "parent-holding", "--days", "2");

        assertThat(ended.code()).isEqualTo(130);
        assertThat(ended.flat())
                .startsWith("2 days for Parent, holding: ")
                .contains("not proven cheapest.", "Interrupted before the proof: no plan costs less than 1.00 USD")
                .contains(" BUY: ", "checks passed.", " CAUTIONS ");
        assertThat(ended.err()).contains("best so far ", "none below 1.00, difference ");
        // The line is wiped out before the answer is written.
        assertThat(ended.err()).matches("(?s).*\\r *\\r");
    }

    @Test
    void json_says_that_it_was_interrupted() throws Exception {
        Ended ended = interrupted(1, SlowSearch.Kind.WITH_A_PLAN, "plan", "parent-holding", "--days", "2", "--json");

        var json = Shape.parse(ended.out());
        assertThat(ended.code()).isEqualTo(130);
        assertThat(json.get("status").textValue()).isEqualTo("not_proven");
        assertThat(json.at("/proof/interrupted").booleanValue()).isTrue();
        assertThat(json.at("/audit/passed").booleanValue()).isTrue();
    }

    @Test
    void before_any_plan_was_found_it_says_so() throws Exception {
        Ended ended = interrupted(1, SlowSearch.Kind.WITHOUT_A_PLAN, "plan", "parent-holding", "--days", "2");

        assertThat(ended.code()).isEqualTo(130);
        assertThat(ended.flat()).contains("no plan found before the interruption", "no proof that there is none");
    }

    @Test
    void the_second_time_ends_at_once() throws Exception {
        Ended ended = interrupted(2, SlowSearch.Kind.DEAF, "plan", "parent-holding", "--days", "2");

        assertThat(ended.code()).isEqualTo(130);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("Ctrl-C again quits", "no plan is shown");
    }
}
