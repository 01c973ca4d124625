package batchwright.report.labels;

import batchwright.plan.Session;
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

    /** All containers of a session of a plan. */
    public static LabelledSession of(String title, Session session) {
        return new LabelledSession(title, session.cookingDay(), session.firstDay(), ContainerLabel.of(session));
    }
}
