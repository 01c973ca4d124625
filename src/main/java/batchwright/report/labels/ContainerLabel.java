package batchwright.report.labels;

import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.List;

/**
 * One packed box: container {@code number} of {@code of} of a dish and eater, in the order in which they are eaten.
 *
 * @param day on which it is eaten; the cooking day is 1
 */
public record ContainerLabel(Batch batch, Fill fill, String eater, int number, int of, int day, Serving.Storage from) {
    /** Dish by dish, eater by eater. */
    public static List<ContainerLabel> of(Session session) {
        List<ContainerLabel> labels = new ArrayList<>();
        for (Batch batch : session.batches()) {
            for (EaterDays eater : session.eaters()) {
                batch.fills().stream()
                        .filter(fill -> fill.isFor(eater.seat().eater()))
                        .forEach(fill -> add(labels, batch, fill, eater));
            }
        }
        return labels;
    }

    private static void add(List<ContainerLabel> labels, Batch batch, Fill fill, EaterDays eater) {
        int number = 0;
        for (Day day : eater.days()) {
            for (Serving serving : day.servings()) {
                for (int i = 0; serving.dish().equals(batch.dish()) && i < serving.count(); i++) {
                    number++;
                    labels.add(new ContainerLabel(
                            batch,
                            fill,
                            eater.seat().eater().name(),
                            number,
                            fill.containers(),
                            day.day(),
                            serving.from()));
                }
            }
        }
    }

    public Dish dish() {
        return batch.dish();
    }

    boolean isFrozen() {
        return from == Serving.Storage.FREEZER;
    }
}
