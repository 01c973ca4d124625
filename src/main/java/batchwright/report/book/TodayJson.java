package batchwright.report.book;

import batchwright.answer.Today;
import batchwright.answer.Today.DayByBook;
import batchwright.answer.Today.Lacking;
import batchwright.book.BoxesLeft;
import batchwright.book.Event.Place;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlan.PlannedSnack;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The same for scripts: schema batchwright.today/1. */
public final class TodayJson {
    private TodayJson() {}

    public static String of(Today today) {
        ObjectNode root = Json.schema("today/1").put("day", today.day().toString());
        today.plan()
                .ifPresentOrElse(
                        plan -> root.putObject("plan")
                                .put("cooking_day", plan.cookingDay().toString())
                                .put("day", plan.number())
                                .put("days", plan.days()),
                        () -> root.putNull("plan"));
        ArrayNode eaters = root.putArray("eaters");
        for (Today.ForEater eater : today.eaters()) {
            ObjectNode node = eaters.addObject().put("eater", eater.eater());
            planned(node, "today", eater.today());
            planned(node, "tomorrow", eater.tomorrow());
            node.put("eaten_kcal", eater.eaten().kcal())
                    .put("nothing_else", eater.eaten().closed());
            boxes(node.putArray("in_no_plan"), eater.over());
            lacking(node.putArray("lacking_later"), eater.lacking());
        }
        boxes(root.putArray("containers"), today.boxes());
        ArrayNode useUp = root.putArray("use_up");
        today.useUp()
                .forEach(spoils -> useUp.addObject()
                        .put("food", spoils.food().food())
                        .put("grams", Json.tenth(spoils.food().grams()))
                        .put("use_by", spoils.useBy().toString()));
        ArrayNode due = root.putArray("due");
        today.due()
                .forEach(each -> due.addObject()
                        .put("do", each.kind().name().toLowerCase(Locale.ROOT))
                        .put("dish", each.what())
                        .put("count", each.count())
                        .put("eater", each.eater().orElse(null))
                        .put("from", each.from().map(Place::word).orElse(null)));
        ArrayNode notes = root.putArray("notes");
        today.notes().forEach(notes::add);
        return Json.text(root);
    }

    private static void planned(ObjectNode node, String name, Optional<DayByBook> day) {
        if (day.isEmpty()) {
            node.putNull(name);
            return;
        }
        EatersDay plan = day.get().planned();
        ObjectNode planned = node.putObject(name);
        food(planned, plan.boxes(), plan.snacks(), plan.kcal());
        ObjectNode left = planned.putObject("left");
        food(left, day.get().boxes(), day.get().snacks(), day.get().kcal());
        lacking(planned.putArray("lacking"), day.get().lacking());
    }

    private static void lacking(ArrayNode array, List<Lacking> all) {
        all.forEach(lacking -> array.addObject()
                .put("day", lacking.day().toString())
                .put("dish", lacking.dish())
                .put("count", lacking.count())
                .put("energy_kcal", Json.tenth(lacking.kcal())));
    }

    private static void food(ObjectNode node, List<PlannedBox> planned, List<PlannedSnack> eaten, BigDecimal kcal) {
        ArrayNode boxes = node.putArray("containers");
        planned.forEach(box -> {
            ObjectNode container = boxes.addObject()
                    .put("dish", box.dish())
                    .put("count", box.count())
                    .put("from", box.frozen() ? "freezer" : "fridge");
            box.before().ifPresent(before -> container.put("of", before.of()));
        });
        ArrayNode snacks = node.putArray("snacks");
        eaten.forEach(snack -> snacks.addObject()
                .put("food", snack.food())
                .put("measure", snack.measure())
                .put("count", snack.count())
                .put("grams", snack.grams())
                .put("always", snack.always()));
        node.put("energy_kcal", kcal);
    }

    static void boxes(ArrayNode boxes, List<BoxesLeft.Lot> lots) {
        lots.forEach(lot -> boxes.addObject()
                .put("dish", lot.boxes().dish())
                .put("eater", lot.boxes().eater())
                .put("count", lot.count())
                .put("in", lot.place().word())
                .put("thawed", lot.thawed())
                .put("until", lot.until().toString()));
    }
}
