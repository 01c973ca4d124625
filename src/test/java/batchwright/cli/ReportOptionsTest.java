package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** plan --report: what is written, and what is said about it. */
class ReportOptionsTest {
    private static final String[] PLAN = {"plan", "parent-holding", "--days", "1", "--cook", "lentil_ragu"};

    @TempDir
    Path here;

    private Cli.Result plan(String... more) {
        String[] args = java.util.Arrays.copyOf(PLAN, PLAN.length + more.length);
        System.arraycopy(more, 0, args, PLAN.length, more.length);
        return Cli.in(here).run(args);
    }

    @Test
    void the_file_is_written_beside_the_answer_and_replaces_an_older_one() throws IOException {
        Path file = here.resolve("plan.html");
        plan("--report", "plan.html", "--label-rounding", "eu");
        Cli.Result with = plan("--report", "plan.html");

        assertThat(with.code()).isZero();
        assertThat(with.err()).isEqualTo("Wrote plan.html\n");
        assertThat(with.out()).isEqualTo(plan().out());
        assertThat(file).content().startsWith("<!DOCTYPE html>").contains("21 CFR 101.9", "size: 210mm 297mm");
    }

    @Test
    void the_sheet_of_labels_brings_its_paper_and_the_rounding_is_named() {
        plan("--report", "plan.html", "--labels", "letter-3x10", "--label-rounding", "eu");

        assertThat(here.resolve("plan.html"))
                .content()
                .contains("size: 215.9mm 279.4mm", "repeat(3, 66.675mm)", "Regulation (EU) 1169/2011");
    }

    @Test
    void unknown_sheets_and_roundings_are_refused_before_anything_is_worked_out() {
        assertThat(plan("--report", "plan.html", "--labels", "a5"))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("\"a5\"", "a4-2x7", "letter-3x10"));
        assertThat(plan("--label-rounding", "uk").err()).contains("\"uk\"", "us, eu");
        assertThat(plan("--start-at", "15").err()).contains("--start-at", "1", "14");
        assertThat(here.resolve("plan.html")).doesNotExist();
    }

    @Test
    void a_place_that_cannot_be_written_to_is_refused() throws IOException {
        assertThat(plan("--report", "no-such-folder/plan.html"))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("no-such-folder"));
        Files.createDirectory(here.resolve("folder.html"));
        assertThat(plan("--report", "folder.html").err()).contains("is a folder");
        assertThat(plan("--report", ".").err()).contains("does not end in .html");
    }
}
