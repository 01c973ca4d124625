package batchwright.report.labels;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet and the labels on it, row by row.
 *
 * @param taken labels at its beginning that were used before
 */
public record FilledSheet(int taken, List<SetLabel> labels) {
    public FilledSheet {
        labels = List.copyOf(labels);
    }

    /** The first of them from the label where the style starts. */
    public static List<FilledSheet> of(List<SetLabel> labels, LabelStyle style) {
        List<FilledSheet> sheets = new ArrayList<>();
        int taken = style.startAt() - 1;
        for (int from = 0; from < labels.size(); ) {
            int to = Math.min(labels.size(), from + style.sheet().labels() - taken);
            sheets.add(new FilledSheet(taken, labels.subList(from, to)));
            from = to;
            taken = 0;
        }
        return sheets;
    }
}
