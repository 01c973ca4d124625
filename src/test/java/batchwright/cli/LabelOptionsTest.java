package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** plan --label-pdf: what is written, and what is said about it. */
class LabelOptionsTest {
    @TempDir
    Path here;

    private Cli.Result plan(String... more) {
        List<String> args = new ArrayList<>(List.of("plan", "parent-holding", "--days", "1", "--cook", "lentil_ragu"));
        args.addAll(List.of(more));
        return Cli.in(here).run(args.toArray(new String[0]));
    }

    @Test
    void the_file_is_written_beside_the_answer_and_replaces_an_older_one() throws IOException {
        Path file = here.resolve("labels.pdf");
        Cli.Result first = plan("--label-pdf", "labels.pdf", "--labels", "a4-3x8", "--start-at", "24");
        byte[] before = Files.readAllBytes(file);
        Cli.Result again = plan("--label-pdf", "labels.pdf", "--labels", "a4-3x8", "--start-at", "24");

        assertThat(first.code()).isZero();
        assertThat(first.err()).isEqualTo("Wrote labels.pdf: 2 sheets a4-3x8\n");
        assertThat(again.err()).isEqualTo(first.err());
        assertThat(again.out()).isEqualTo(plan().out());
        assertThat(file).hasBinaryContent(before);
        try (PDDocument pdf = Loader.loadPDF(before)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(new PDFTextStripper().getText(pdf)).contains("Lentil and mushroom ragu", "Allergens: ");
        }
    }

    @Test
    void a_pdf_of_somebody_else_stays_unless_forced() throws IOException {
        Path file = here.resolve("labels.pdf");
        Files.writeString(file, "%PDF-1.7 of somebody else");

        assertThat(plan("--label-pdf", "labels.pdf"))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("not made by this program"));
        assertThat(file).hasContent("%PDF-1.7 of somebody else");
        assertThat(plan("--label-pdf", "labels.pdf", "--force").code()).isZero();
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-1.4");
    }

    @Test
    void what_cannot_be_is_refused_before_anything_is_worked_out() {
        assertThat(plan("--label-pdf", "labels.html").err()).contains("does not end in .pdf");
        assertThat(plan("--label-pdf", "labels.pdf", "--labels", "letter-2x5", "--start-at", "11"))
                .satisfies(r -> assertThat(r.code()).isEqualTo(2))
                .satisfies(r -> assertThat(r.err()).contains("--start-at", "1", "10"));
        assertThat(plan("--label-pdf", "labels.pdf", "--start-at", "0").code()).isEqualTo(2);
        assertThat(here.resolve("labels.pdf")).doesNotExist();
    }

    @Test
    void without_a_plan_there_are_no_labels() {
        Cli.Result none = plan("--budget", "1", "--label-pdf", "labels.pdf");

        assertThat(none.code()).isEqualTo(ExitCode.NO_PLAN.code());
        assertThat(none.err()).contains("No plan: labels.pdf is not written");
        assertThat(here.resolve("labels.pdf")).doesNotExist();
    }

    @Test
    void a_report_leaves_used_labels_empty() {
        plan("--report", "plan.html", "--start-at", "5");

        assertThat(here.resolve("plan.html"))
                .content()
                .containsPattern("(?s)(<div class=\"taken\"></div>\\s*){4}<div class=\"label ");
    }
}
