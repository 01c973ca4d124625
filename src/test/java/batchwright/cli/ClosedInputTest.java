package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions with nobody to answer them: a closed or empty input ends the command, with nothing saved and no fault of ours. */
class ClosedInputTest {
    @TempDir
    Path here;

    @Test
    void needs_with_standard_input_closed() throws IOException {
        Cli.Result result =
                Program.in(here).behind("sh", "-c", "exec \"$@\" <&-", "sh").run("needs");

        assertThat(result.code()).as(result.both()).isEqualTo(2);
        assertThat(result.err()).startsWith("error: no eater is named");
    }

    /** A terminal whose user ends the input at once, and one that is asked a question more: only where script of util-linux is. */
    @Test
    void a_terminal_that_ends() throws IOException {
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(Path.of("/usr/bin/script")), "script is not there");
        Folders.starter(here);
        Map<String, String> before = Folders.content(here);
        // The input of script is at its end, and it hands that on to the terminal.
        Cli.Result result = Program.in(here)
                .behind("sh", "-c", "script -qec \"$*\" /dev/null", "sh")
                .run("needs");

        assertThat(result.code()).as(result.both()).isEqualTo(130);
        assertThat(result.both()).contains("Nothing was answered.").doesNotContain("fault");
        assertThat(Folders.content(here)).isEqualTo(before);
    }
}
