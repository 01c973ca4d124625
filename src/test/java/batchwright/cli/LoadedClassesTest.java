package batchwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process of its own, asked which classes it loads: what few ask for costs no start-up time unless somebody wants it. */
class LoadedClassesTest {
    @TempDir
    Path here;

    @BeforeEach
    void starter() {
        Folders.starter(here);
    }

    @Test
    void a_plan_loads_no_class_of_ojalgo_or_pdfbox_and_no_template() throws Exception {
        assertThat(loaded())
                .contains("batchwright.cli.PlanCommand")
                .doesNotContain(
                        "org.ojalgo",
                        "org.apache.pdfbox",
                        "org.apache.fontbox",
                        "gg.jte",
                        "batchwright.report.html.template",
                        "batchwright.report.html.part");
    }

    @Test
    void a_second_opinion_does() throws Exception {
        assertThat(loaded("--second-opinion")).contains("org.ojalgo.optimisation.ExpressionsBasedModel");
    }

    @Test
    void a_report_does() throws Exception {
        assertThat(loaded("--report", "plan.html"))
                .contains("gg.jte.TemplateEngine ", "batchwright.report.html.template.JtereportGenerated ")
                .doesNotContain("gg.jte.compiler", "org.apache.pdfbox");
    }

    @Test
    void labels_as_pdf_load_pdfbox_and_no_template() throws Exception {
        assertThat(loaded("--label-pdf", "labels.pdf"))
                .contains("org.apache.pdfbox.pdmodel.PDDocument ")
                .doesNotContain("gg.jte");
    }

    private String loaded(String... more) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-cp",
                System.getProperty("java.class.path"),
                "batchwright.cli.Main"));
        command.addAll(List.of(
                "plan", "parent-holding", "--days", "2", "--cook", "lentil_ragu,turkey_chili", "--seconds", "40"));
        command.addAll(List.of(more));
        Process process = new ProcessBuilder(command)
                .directory(here.toFile())
                .redirectErrorStream(true)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        // A slow machine finds a plan in the time given, but no proof.
        assertThat(process.waitFor()).isIn(ExitCode.DONE.code(), ExitCode.NOT_PROVEN.code());
        return out;
    }
}
