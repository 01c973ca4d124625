package batchwright.cli;

import batchwright.app.Refused;
import batchwright.report.html.HtmlReport;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whether a plan is also written as a report. */
final class ReportOptions {
    private static final String REPORT = "--report";

    @Option(
            names = REPORT,
            paramLabel = "FILE.html",
            description =
                    "Also write the plan as one HTML file: charts, shopping list, cooking sheet, labels. Replaces an older one.")
    private @Nullable String file;

    /**
     * Looks at what can be looked at before there is a plan.
     *
     * @throws Refused when the file cannot be written, or its name does not tell what it holds
     */
    void check(FilesBeside files) {
        check(file, files);
    }

    /** The same for a report of another command; null when none is wanted. */
    static void check(@Nullable String file, FilesBeside files) {
        if (file == null) {
            return;
        }
        if (!file.toLowerCase(Locale.ROOT).matches(".*\\.html?")) {
            throw Refused.because(
                    REPORT + " knows no \"" + file + "\": it does not end in .html",
                    "The ending says what the file holds: " + REPORT + " plan.html.");
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
}
