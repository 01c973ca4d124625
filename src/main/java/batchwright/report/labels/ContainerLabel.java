package batchwright.report.labels;

import batchwright.answer.PotLabels;
import batchwright.food.Dish;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One packed box: container {@code number} of those of a dish and eater, in the order in which they are eaten.
 *
 * @param eaterNumber which of the plan's eaters, the first being 1
 * @param day on which it is eaten; the cooking day is 1
 */
public record ContainerLabel(
        Batch batch, Fill fill, String eater, int eaterNumber, int number, int day, Serving.Storage from) {
    /** Dish by dish, eater by eater. */
    public static List<ContainerLabel> of(Session session) {
        List<ContainerLabel> labels = new ArrayList<>();
        for (Batch batch : session.batches()) {
            for (int e = 0; e < session.eaters().size(); e++) {
                EaterDays eater = session.eaters().get(e);
                int eaterNumber = e + 1;
                batch.fills().stream()
                        .filter(fill -> fill.isFor(eater.seat().eater()))
                        .forEach(fill -> add(labels, batch, fill, eater, eaterNumber));
            }
        }
        return labels;
    }

    /** Those of a pot as it came out. */
    public static List<ContainerLabel> of(PotLabels pot) {
        return pot.boxes().stream()
                .map(box -> new ContainerLabel(
                        pot.batch(), box.fill(), box.eater(), box.eaterNumber(), box.number(), box.day(), box.from()))
                .toList();
    }

    private static void add(List<ContainerLabel> labels, Batch batch, Fill fill, EaterDays eater, int eaterNumber) {
        int number = 0;
        for (Day day : eater.days()) {
            for (Serving serving : day.servings()) {
                for (int i = 0; serving.dish().equals(batch.dish()) && i < serving.count(); i++) {
                    number++;
                    labels.add(new ContainerLabel(
                            batch, fill, eater.seat().eater().name(), eaterNumber, number, day.day(), serving.from()));
                }
            }
        }
    }

    public Dish dish() {
        return batch.dish();
    }

    /** How many such boxes there are. */
    int of() {
        return fill.containers();
    }

    /** Of its parts those that are in this box. */
    Stream<Portion> inside() {
        return fill.portions().stream().filter(portion -> portion.rawGrams() > 0);
    }

    boolean isFrozen() {
        return from == Serving.Storage.FREEZER;
    }
}
