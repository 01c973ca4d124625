package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a plan may be written beside its answer. */
class OutputFilesTest {
    @TempDir
    Path folder;

    private Cli.Result plan(String options) {
        return Cli.in(folder).run(("plan parent-holding --days 1 --cook lentil_ragu " + options).split(" "));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--shopping profiles/pantry.csv",
                "--report profiles/list.html",
                "--calendar foods/dishes/../plan.ics",
                "--model foods/plan.mps"
            })
    void the_folders_that_the_user_edits_are_only_read(String options) throws Exception {
        Cli.in(folder).run("init", ".");
        byte[] before = Files.readAllBytes(folder.resolve("profiles/pantry.csv"));

        Cli.Result run = plan(options);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("your own files, which are only read");
        assertThat(folder.resolve("profiles/pantry.csv")).hasBinaryContent(before);
    }

    @Test
    void a_file_holds_one_thing() {
        Cli.Result run = plan("--model s.mps --shopping s.names.csv");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("is named for two things");
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "plan.csv", "plan.ics"})
    void the_ending_of_a_report_says_what_it_holds(String file) {
        Cli.Result run = plan("--report " + file);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--report knows no \"" + file + "\": it does not end in .html");
    }
}
