package batchwright.report.labels;

import java.time.LocalDate;
import java.util.List;

/**
 * The containers of a cooking session that get a label.
 *
 * @param title what they are, for the reader of the file
 * @param firstDay by which number the cooking day is called
 */
public record LabelledSession(String title, LocalDate cookingDay, int firstDay, List<ContainerLabel> labels) {
    public LabelledSession {
        labels = List.copyOf(labels);
    }
}
