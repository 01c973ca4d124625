package batchwright.cli;

import batchwright.answer.PotLabels;
import batchwright.app.Refused;
import batchwright.report.export.WholePlan;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.pdf.LabelPdf;
import batchwright.report.print.Show;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How labels are, in a report or in a file of their own, and whether there is such a file. */
public final class LabelOptions {
    private static final String LABELS = "--labels";
    private static final String PDF = "--label-pdf";
    private static final String START_AT = "--start-at";
    private static final String ROUNDING = "--label-rounding";

    @Option(
            names = PDF,
            paramLabel = "FILE.pdf",
            description = "Also write the labels as sheets to print at 100 %%. Replaces an older one.")
    private @Nullable String pdf;

    @Option(
            names = LABELS,
            paramLabel = "SHEET",
            defaultValue = "a4-2x7",
            description = "Labels, and the paper of a report: a4-2x7, a4-3x8, a4-2x4, letter-2x5, letter-3x10; default"
                    + " ${DEFAULT-VALUE}.")
    private String labels = "";

    @Option(
            names = START_AT,
            paramLabel = "N",
            defaultValue = "1",
            description = "First free label of a sheet already begun, counted row by row; default ${DEFAULT-VALUE}.")
    private String startAt = "";

    @Option(
            names = ROUNDING,
            paramLabel = "RULES",
            defaultValue = "us",
            description = "Rounding of labels: us (21 CFR 101.9) or eu; default ${DEFAULT-VALUE}.")
    private String rounding = "";

    /**
     * Looks at what can be looked at before there is a plan.
     *
     * @throws Refused when the file cannot be written, or its name does not tell what it holds
     */
    public void check(FilesBeside files) {
        if (pdf == null) {
            return;
        }
        if (!pdf.toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw Refused.because(
                    PDF + " knows no \"" + pdf + "\": it does not end in .pdf",
                    "The ending says what the file holds: " + PDF + " labels.pdf.");
        }
        files.add(pdf, LabelPdf::isIn);
    }

    /** Whether there is to be a file of them. */
    public boolean isWanted() {
        return pdf != null;
    }

    /** Without a plan there is nothing to stick labels to. */
    void write(Optional<WholePlan> plan, LabelStyle style, FilesBeside files) {
        if (pdf == null) {
            return;
        }
        if (plan.isEmpty()) {
            files.leaveOut(pdf);
            return;
        }
        write(LabelPdf.of(plan.get(), style), style, files);
    }

    /** Those of a pot as it came out. */
    public void write(PotLabels pot, LabelStyle style, FilesBeside files) {
        if (pdf != null) {
            write(LabelPdf.of(pot, style), style, files);
        }
    }

    private void write(LabelPdf made, LabelStyle style, FilesBeside files) {
        files.write(Objects.requireNonNull(pdf), made.content(), remark(made, style));
    }

    private static String remark(LabelPdf made, LabelStyle style) {
        return ": " + Show.count(made.sheets(), "sheet", "sheets") + " "
                + style.sheet().id()
                + (made.lacking().isEmpty()
                        ? ""
                        : "; letters that its font lacks stand as ?, names of such letters alone as numbers");
    }

    /** @throws Refused when there is no such sheet, label of it, or rounding */
    public LabelStyle style() {
        LabelSheet sheet = LabelSheet.of(labels.toLowerCase(Locale.ROOT))
                .orElseThrow(() -> unknown(
                        LABELS,
                        labels,
                        Arrays.stream(LabelSheet.values()).map(LabelSheet::id).collect(Collectors.joining(", "))));
        return new LabelStyle(
                sheet,
                Arrays.stream(LabelRounding.values())
                        .filter(r -> r.id().equals(rounding.toLowerCase(Locale.ROOT)))
                        .findFirst()
                        .orElseThrow(() -> unknown(ROUNDING, rounding, "us, eu")),
                new Given(START_AT, startAt).whole(1, sheet.labels(), "labels of a sheet"));
    }

    private static Refused unknown(String option, String given, String known) {
        return Refused.because(option + " knows no \"" + given + "\"", "Give one of " + known + ".");
    }
}
