package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.KeptPart;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptSession;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Serving;
import batchwright.report.labels.ContainerLabel;
import batchwright.report.labels.LabelledSession;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** A label for each container of a cooking session that was kept. */
public final class LabelsOfSession {
    private final KeptSession session;
    private final Kitchen kitchen;
    private final UnaryOperator<String> name;

    private LabelsOfSession(KeptSession session, Kitchen kitchen, UnaryOperator<String> name) {
        this.session = session;
        this.kitchen = kitchen;
        this.name = name;
    }

    /**
     * @param name of an eater by its short name
     * @throws Refused when a dish of the plan is gone, or was written anew since
     */
    public static LabelledSession of(KeptSession session, Kitchen kitchen, UnaryOperator<String> name) {
        return new LabelsOfSession(session, kitchen, name).labelled();
    }

    private List<String> eaters() {
        return session.plan().eatersDays().stream()
                .map(EatersDay::eater)
                .distinct()
                .toList();
    }

    private LabelledSession labelled() {
        List<String> eaters = eaters();
        List<ContainerLabel> labels = new ArrayList<>();
        for (KeptBatch kept : session.batches()) {
            Batch batch = batch(kept);
            for (int f = 0; f < kept.fills().size(); f++) {
                Fill fill = batch.fills().get(f);
                kept.fills()
                        .get(f)
                        .eater()
                        .ifPresent(eater -> add(labels, batch, fill, eater, eaters.indexOf(eater) + 1));
            }
        }
        return new LabelledSession(
                "cooking of " + session.date() + " for "
                        + String.join(" and ", eaters.stream().map(name).toList()),
                session.date(),
                session.day(),
                labels);
    }

    private void add(List<ContainerLabel> labels, Batch batch, Fill fill, String eater, int eaterNumber) {
        int number = 0;
        for (EatersDay day : session.plan().eatersDays()) {
            if (!day.eater().equals(eater) || session.plan().sessionOf(day.day()) != session.day()) {
                continue;
            }
            for (PlannedBox box : day.boxes()) {
                for (int i = 0; box.isNew() && box.dish().equals(batch.dish().id()) && i < box.count(); i++) {
                    number++;
                    labels.add(new ContainerLabel(
                            batch,
                            fill,
                            name.apply(eater),
                            eaterNumber,
                            number,
                            day.day() - session.day() + 1,
                            box.frozen() ? Serving.Storage.FREEZER : Serving.Storage.FRIDGE));
                }
            }
        }
    }

    private Batch batch(KeptBatch kept) {
        Dish dish = new KeptDish(kitchen).of(kept);
        return new Batch(
                dish,
                kept.fills().stream()
                        .map(fill -> new Fill(
                                Optional.empty(),
                                fill.containers(),
                                dish.parts().stream()
                                        .map(part -> new Portion(part, raw(fill, part)))
                                        .toList()))
                        .toList());
    }

    private static int raw(KeptFill fill, Part part) {
        return fill.parts().stream()
                .filter(kept -> kept.part().equals(part.name()))
                .mapToInt(KeptPart::rawGrams)
                .sum();
    }
}
