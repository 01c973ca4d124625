package batchwright.cli;

import batchwright.app.Refused;
import batchwright.report.html.HtmlReport;
import batchwright.report.html.ReportStyle;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether a plan is also written as a report, and how its labels are. */
final class ReportOptions {
    private static final String REPORT = "--report";
    private static final String LABELS = "--labels";
    private static final String ROUNDING = "--label-rounding";

    @Option(
            names = REPORT,
            paramLabel = "FILE.html",
            description =
                    "Also write the plan as one HTML file: charts, shopping list, cooking sheet, labels. Replaces an older one.")
    private @Nullable String file;

    @Option(
            names = LABELS,
            paramLabel = "SHEET",
            defaultValue = "a4-2x7",
            description =
                    "Labels of the report, and its paper: a4-2x7, a4-3x8, a4-2x4, letter-2x5, letter-3x10; default"
                            + " ${DEFAULT-VALUE}.")
    private String labels = "";

    @Option(
            names = ROUNDING,
            paramLabel = "RULES",
            defaultValue = "us",
            description = "Rounding of labels: us (21 CFR 101.9) or eu; default ${DEFAULT-VALUE}.")
    private String rounding = "";

    /**
     * Looks at what can be looked at before there is a plan.
     *
     * @throws Refused when the file cannot be written, or its name does not tell what it shall hold
     */
    void check(FilesBeside files) {
        if (file == null) {
            return;
        }
        if (!file.toLowerCase(Locale.ROOT).matches(".*\\.html?")) {
            throw Refused.because(
                    REPORT + " knows no \"" + file + "\": it does not end in .html",
                    "The ending says what it shall hold: " + REPORT + " plan.html.");
        }
        files.add(file, HtmlReport::isIn);
    }

    /**
     * Writes it, if it is wanted; also without a plan, since it tells why there is none, but not over a report from before.
     *
     * @param report makes it
     */
    void write(Supplier<String> report, boolean hasPlan, FilesBeside files) {
        if (file == null) {
            return;
        }
        if (hasPlan || !files.isThere(file)) {
            files.write(file, report.get(), hasPlan ? "" : ": no plan, and why there is none");
        } else {
            files.leaveOut(file);
        }
    }

    /** @throws Refused when there is no such sheet or rounding */
    ReportStyle style() {
        String sheet = labels.toLowerCase(Locale.ROOT);
        return new ReportStyle(
                LabelSheet.of(sheet)
                        .orElseThrow(() -> unknown(
                                LABELS,
                                labels,
                                Arrays.stream(LabelSheet.values())
                                        .map(LabelSheet::id)
                                        .collect(Collectors.joining(", ")))),
                Arrays.stream(LabelRounding.values())
                        .filter(r -> r.id().equals(rounding.toLowerCase(Locale.ROOT)))
                        .findFirst()
                        .orElseThrow(() -> unknown(ROUNDING, rounding, "us, eu")));
    }

    private static Refused unknown(String option, String given, String known) {
        return Refused.because(option + " knows no \"" + given + "\"", "Give one of " + known + ".");
    }
}
