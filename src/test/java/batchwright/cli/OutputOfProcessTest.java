package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program as a process: full disks, closed streams, readers that leave. */
@EnabledOnOs(OS.LINUX)
@Timeout(300)
class OutputOfProcessTest {
    @TempDir
    Path here;

    private Shell.Ended run(String script) throws Exception {
        return Shell.run(here, script);
    }

    @ParameterizedTest
    @CsvSource({
        "plan --days 1 > /dev/full",
        "plan --days 1 --json > /dev/full",
        "bw --help > /dev/full",
        "bw needs parent-holding >&-"
    })
    void an_answer_that_is_lost_is_no_success(String script) throws Exception {
        Shell.Ended ended = run(script);

        assertThat(ended.code()).isEqualTo(5);
        assertThat(ended.err()).contains("error: the answer could not be written");
    }

    @Test
    void a_report_is_written_though_the_answer_is_lost() throws Exception {
        assertThat(run("plan --days 1 --report r.html > /dev/full").code()).isEqualTo(5);
        assertThat(here.resolve("r.html")).content().endsWith("</html>\n");
    }

    @Test
    void a_reader_that_leaves_is_quiet() throws Exception {
        Shell.Ended ended = run("bw foods | true");

        assertThat(ended.err()).doesNotContain("error");
        assertThat(ended.code()).isZero();
    }

    @Test
    void the_file_that_takes_the_answer_takes_nothing_else() throws Exception {
        Shell.Ended ended = run("plan --days 1 --shopping s.csv > s.csv");

        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.err()).contains("is where the answer or the messages of this command go");
    }

    /**
     * A limit on the size of files stands for a full disk: it needs no rights and lets nobody through. The note fits, the report
     * does not; what is tried before the search (32 KiB) fits, too.
     */
    @Test
    void a_full_disk_costs_the_report_and_not_the_plan() throws Exception {
        assertThat(run("plan --days 1 --report r.html").code()).isZero();
        byte[] older = Files.readAllBytes(here.resolve("r.html"));
        long kib = 48;
        assertThat(older.length).isGreaterThan((int) (kib * 1024));

        Shell.Ended ended = run("ulimit -f " + kib + "; plan --days 2 --report r.html --shopping s.txt");

        assertThat(ended.code()).isEqualTo(5);
        assertThat(ended.out()).startsWith("2 days for Parent, holding: ").contains("CAUTIONS");
        assertThat(ended.err()).contains("error: \"r.html\" cannot be written", "Wrote s.txt");
        assertThat(here.resolve("r.html")).hasBinaryContent(older);
        assertThat(here).isDirectoryNotContaining("glob:**.tmp");
    }

    @Test
    void a_disk_that_takes_nothing_costs_no_search() throws Exception {
        Shell.Ended ended = run("ulimit -f 1; plan --days 1 --report r.html");

        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err()).contains("\"r.html\" cannot be written");
        assertThat(here).isEmptyDirectory();
    }

    @Test
    void saving_a_profile_on_a_full_disk_leaves_nothing() throws Exception {
        SmallStarter.into(here);
        Map<String, String> before = Folders.content(here);

        Shell.Ended ended = run("ulimit -f 0; bw needs --sex male --age 27 --weight '74 kg' --height '181 cm'"
                + " --activity active --goal hold --save bob");

        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.err()).contains("bob.yaml\" cannot be written");
        assertThat(Folders.content(here)).isEqualTo(before);
    }

    @Test
    void init_without_room_leaves_nothing_and_can_be_done_again() throws Exception {
        Shell.Ended ended = run("ulimit -f 16; bw init k");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(ended.err()).contains("Nothing was written.");
        assertThat(here).isEmptyDirectory();

        assertThat(run("bw init k; bw init k; bw check --data k"))
                .satisfies(again -> assertThat(again.code()).isZero())
                .satisfies(again -> assertThat(again.out()).contains("are in k already; nothing was written"));
    }

    @Test
    void init_in_a_folder_that_is_there() throws Exception {
        Files.writeString(here.resolve("notes.txt"), "mine");
        Shell.Ended ended = run("ulimit -f 16; bw init .");
        assertThat(ended.code()).isEqualTo(2);
        assertThat(here).isDirectoryNotContaining(OutputOfProcessTest::isFoods);

        // As if it had been interrupted between its two folders.
        assertThat(run("bw init . && rm -r foods && bw init . && bw check").code())
                .isZero();
        assertThat(here.resolve("notes.txt")).hasContent("mine");
    }

    private static boolean isFoods(Path path) {
        return path.endsWith("foods");
    }

    @Test
    void two_processes_that_write_one_file_leave_one_of_the_two() throws Exception {
        Shell.Ended ended = run(
                "plan --days 1 --report r.html >/dev/null & a=$!; plan --days 2 --report r.html >/dev/null & b=$!; wait $a && wait $b");

        assertThat(ended.code()).as(ended.err()).isZero();
        String report = Files.readString(here.resolve("r.html"));
        assertThat(report).startsWith("<!DOCTYPE html>").endsWith("</html>\n").containsOnlyOnce("</html>");
        assertThat(report).containsAnyOf("<bdi>1 day for Parent", "<bdi>2 days for Parent");
        assertThat(here).isDirectoryNotContaining("glob:**.tmp");
    }
}
