package batchwright.report.html;

import batchwright.report.html.part.PageHead;
import batchwright.report.labels.FilledSheet;
import batchwright.report.labels.LabelSheet;
import batchwright.report.labels.LabelStyle;
import batchwright.report.labels.SetLabel;
import batchwright.report.labels.Typeface;
import java.util.List;

/** A label for each container: cards on a screen, sheets in a grid on paper. */
public record LabelsPage(PageHead head, List<FilledSheet> sheets) {
    static LabelsPage of(PlanPage page) {
        LabelStyle style = page.style().labels();
        List<SetLabel> labels = SetLabel.of(page.plan(), style, Typeface.ESTIMATED);
        // The sheet already begun is used up by the first session.
        LabelStyle here = page.session() > 1 ? new LabelStyle(style.sheet(), style.rounding()) : style;
        return new LabelsPage(page.head("labels", "Labels", says(page, style)), FilledSheet.of(labels, here));
    }

    private static String says(PlanPage page, LabelStyle style) {
        LabelSheet sheet = style.sheet();
        return "One for each of " + page.containers() + " containers. On paper: "
                + sheet.paper().label() + ", "
                + sheet.columns() + " by " + sheet.rows() + " labels of "
                + sheet.labelWidthMm().toPlainString()
                + " × " + sheet.labelHeightMm().toPlainString()
                + " mm; print at 100 %, without margins or fitting to the page. Figures are "
                + style.rounding().rules().says() + "; energy and grams of the plan are not.";
    }
}
