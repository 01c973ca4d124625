package batchwright.answer;

import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Serving;
import java.time.LocalDate;
import java.util.List;

/**
 * Containers that were filled from a pot as it came out, for their labels.
 *
 * @param batch with portions as they are now
 * @param firstDay by which number of the plan the cooking day is called
 */
public record PotLabels(Batch batch, LocalDate cookingDay, int firstDay, List<Box> boxes) {
    public PotLabels {
        boxes = List.copyOf(boxes);
    }

    /**
     * One container.
     *
     * @param eater how they are called
     * @param eaterNumber which of the plan's eaters, the first being 1
     * @param number of those of the dish and eater, in the order in which they are eaten
     * @param day on which it is eaten; the cooking day is 1
     */
    public record Box(Fill fill, String eater, int eaterNumber, int number, int day, Serving.Storage from) {}
}
