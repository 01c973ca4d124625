package batchwright.report.book;

import batchwright.answer.Today;
import batchwright.book.BoxesLeft;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
            node.put("eaten_kcal", eater.eaten()).put("nothing_else", eater.closed());
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
                        .put("count", each.count()));
        ArrayNode notes = root.putArray("notes");
        today.notes().forEach(notes::add);
        return Json.text(root);
    }

    private static void planned(ObjectNode node, String name, Optional<EatersDay> day) {
        if (day.isEmpty()) {
            node.putNull(name);
            return;
        }
        ObjectNode planned = node.putObject(name);
        ArrayNode boxes = planned.putArray("containers");
        day.get()
                .boxes()
                .forEach(box -> boxes.addObject()
                        .put("dish", box.dish())
                        .put("count", box.count())
                        .put("from", box.frozen() ? "freezer" : "fridge"));
        ArrayNode snacks = planned.putArray("snacks");
        day.get()
                .snacks()
                .forEach(snack -> snacks.addObject()
                        .put("food", snack.food())
                        .put("measure", snack.measure())
                        .put("count", snack.count())
                        .put("grams", snack.grams())
                        .put("always", snack.always()));
        planned.put("energy_kcal", day.get().kcal());
    }

    static void boxes(ArrayNode boxes, List<BoxesLeft.Lot> lots) {
        lots.forEach(lot -> boxes.addObject()
                .put("dish", lot.boxes().dish())
                .put("eater", lot.boxes().eater())
                .put("count", lot.count())
                .put("in", TodayText.place(lot.place()))
                .put("until", lot.until().toString()));
    }
}
