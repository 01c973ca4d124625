package batchwright.report.html;

import batchwright.report.labels.LabelRounding;
import batchwright.report.labels.LabelSheet;

/** What a reader chooses of a report: the sheet of labels, whose paper all pages are for, and the rounding of labels. */
public record ReportStyle(LabelSheet labels, LabelRounding rounding) {}
