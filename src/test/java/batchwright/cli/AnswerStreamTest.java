package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.app.MakePlan;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer that does not arrive is noticed, whatever the command. */
class AnswerStreamTest {
    @TempDir
    Path here;

    private record Ended(int code, String err) {}

    /** @param takes how many bytes arrive before the stream fails */
    private Ended run(int takes, String why, boolean isPipe, String... args) {
        var failing = new OutputStream() {
            private int rest = takes;

            @Override
            public void write(int octet) throws IOException {
                if (rest-- <= 0) {
                    throw new IOException(why);
                }
            }
        };
        var err = new ByteArrayOutputStream();
        var terminal = new Terminal(
                new AnswerStream(failing, () -> isPipe),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Optional.empty(),
                () -> false,
                OptionalInt::empty,
                false);
        int code = Main.run(args, terminal, new MakePlan(), here, Clock.systemUTC());
        return new Ended(code, err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--help",
                "plan --help",
                "needs parent-holding",
                "snack 430 --json",
                "dishes",
                "foods oats",
                "check --json"
            })
    void every_command_ends_with_5_and_a_line(String line) {
        String[] args = line.isEmpty() ? new String[0] : line.split(" ");

        for (int takes : new int[] {0, 20}) {
            Ended ended = run(takes, "No space left on device", false, args);
            assertThat(ended.code()).isEqualTo(5);
            assertThat(ended.err()).contains("error: the answer could not be written: No space left on device\n");
        }
    }

    @Test
    void a_reader_that_left_is_no_error() {
        assertThat(run(20, "Broken pipe", false, "dishes")).isEqualTo(new Ended(0, ""));
        assertThat(run(20, "Datenübergabe unterbrochen", true, "dishes")).isEqualTo(new Ended(0, ""));
    }

    @Test
    void a_command_that_failed_anyway_keeps_its_code() {
        Ended ended = run(0, "", false, "needs", "nobody", "--json");

        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.err()).contains("nobody", "the answer could not be written\n");
    }

    @Test
    void where_there_is_nothing_to_answer_nothing_can_be_lost() {
        assertThat(run(0, "closed", false, "check")).isEqualTo(new Ended(0, ""));
    }
}
