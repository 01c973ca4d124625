package batchwright.report.html;

import batchwright.report.labels.LabelCss;
import batchwright.report.labels.LabelFit;
import batchwright.report.labels.LabelWords;

/** A label: its words, and those of them that were cut or said in short to fit. */
public record LabelCard(LabelWords words, LabelFit fit) {
    public String look() {
        return LabelCss.type(fit.points());
    }
}
