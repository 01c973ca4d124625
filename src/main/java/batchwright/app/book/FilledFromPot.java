package batchwright.app.book;

import batchwright.answer.PotAnswer.PotFill;
import batchwright.answer.PotLabels;
import batchwright.answer.PotLabels.Box;
import batchwright.app.Workspace;
import batchwright.book.KeptPlan;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.book.KeptPlan.KeptFill;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.person.Eater;
import batchwright.plan.Batch;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Serving.Storage;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The containers of a batch of a kept plan, one part of them as it came out of the pot. */
record FilledFromPot(Workspace workspace, Kitchen kitchen, KeptPlan plan, KeptBatch batch) {
    /**
     * @param dish as it is cooked
     * @param part as it came out
     * @param shares what goes into each container that has the part
     */
    PotLabels labels(Dish dish, Part part, List<PotFill> shares) {
        Map<String, Fill> fills = new LinkedHashMap<>();
        batch.fills().forEach(kept -> fills.put(kept.eater().orElse(""), fill(kept, dish, part, shares)));
        List<Box> boxes = new ArrayList<>();
        List<String> eaters =
                plan.eatersDays().stream().map(EatersDay::eater).distinct().toList();
        for (String eater : eaters) {
            Fill fill = fills.get(eater);
            if (fill != null) {
                boxes.addAll(boxes(eater, eaters.indexOf(eater) + 1, fill));
            }
        }
        return new PotLabels(new Batch(dish, List.copyOf(fills.values())), plan.date(batch.day()), batch.day(), boxes);
    }

    private List<Box> boxes(String id, int eaterNumber, Fill fill) {
        String name = fill.eater().map(Eater::name).orElse(id);
        List<Box> boxes = new ArrayList<>();
        for (EatersDay day : plan.eatersDays()) {
            if (!day.eater().equals(id) || plan.sessionOf(day.day()) != batch.day()) {
                continue;
            }
            for (PlannedBox planned : day.boxes()) {
                for (int i = 0; planned.isNew() && planned.dish().equals(batch.dish()) && i < planned.count(); i++) {
                    boxes.add(new Box(
                            fill,
                            name,
                            eaterNumber,
                            boxes.size() + 1,
                            day.day() - batch.day() + 1,
                            planned.frozen() ? Storage.FREEZER : Storage.FRIDGE));
                }
            }
        }
        return boxes;
    }

    private Fill fill(KeptFill kept, Dish dish, Part asCooked, List<PotFill> shares) {
        Optional<PotFill> share = shares.stream()
                .filter(each -> each.eater().equals(kept.eater().orElse("")))
                .findFirst();
        List<Portion> portions = dish.parts().stream()
                .map(part -> share.filter(s -> part.name().equals(asCooked.name()))
                        .map(s -> new Portion(asCooked, raw(s, asCooked)))
                        .orElse(new Portion(part, raw(kept, part))))
                .toList();
        Optional<Eater> eater = kept.eater()
                .flatMap(
                        id -> workspace.source().eater(id, Optional.of(kitchen)).value());
        return new Fill(eater, kept.containers(), portions);
    }

    /** Raw grams that came to the share. */
    private static int raw(PotFill share, Part asCooked) {
        return share.grams()
                .now()
                .divide(asCooked.yieldFactor(), MathContext.DECIMAL64)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    private static int raw(KeptFill fill, Part part) {
        return fill.parts().stream()
                .filter(p -> p.part().equals(part.name()))
                .mapToInt(KeptPlan.KeptPart::rawGrams)
                .sum();
    }
}
