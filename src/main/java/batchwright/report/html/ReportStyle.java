package batchwright.report.html;

import batchwright.report.cooking.KitchenClock;
import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;

/** What a reader chooses of a report: the sheet of labels, whose paper all pages are for, and the rounding of labels. */
public record ReportStyle(LabelSheet labels, LabelRounding rounding, KitchenClock clock) {
    /** With the minutes of cooking since its start. */
    public ReportStyle(LabelSheet labels, LabelRounding rounding) {
        this(labels, rounding, KitchenClock.FROM_ZERO);
    }

    public ReportStyle by(KitchenClock other) {
        return new ReportStyle(labels, rounding, other);
    }
}
