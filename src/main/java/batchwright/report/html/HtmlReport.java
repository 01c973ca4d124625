package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.report.html.part.Document;
import batchwright.report.html.part.Templates;

/** The report as one HTML file: no script, no font and no picture from elsewhere. The same answer gives the same bytes. */
public final class HtmlReport {
    private HtmlReport() {}

    /** Whether a file with this beginning is such a report. */
    public static boolean isIn(String beginning) {
        return beginning.contains("name=\"generator\" content=\"" + Document.GENERATOR + "\"");
    }

    public static String of(PlanAnswer answer, ReportStyle style) {
        return answer.plan()
                .map(plan -> page(PlanReport.of(answer, plan, style)))
                .orElseGet(() -> page(NoPlanPage.of(answer, style)));
    }

    private static String page(PlanReport report) {
        return Templates.render("report", report);
    }

    private static String page(NoPlanPage none) {
        return Templates.render("noplan", none);
    }
}
