package batchwright.report.plan;

import batchwright.answer.EatenFirst;
import batchwright.answer.PlanAnswer;
import batchwright.book.BoxesLeft;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** The same in the JSON of a plan: {@code eaten_first}, {@code left_besides} and {@code past_last_day}. */
public final class EatenFirstJson {
    private EatenFirstJson() {}

    /** A plan that begins after them. */
    public static String of(EatenFirst first, PlanAnswer answer, KitchenClock clock) {
        ObjectNode root = PlanJson.object(answer, clock);
        if (!first.isNone()) {
            put(root, first);
        }
        return Json.text(root);
    }

    /** When they last for all days, so that nothing is cooked. */
    public static String ofAll(EatenFirst first) {
        ObjectNode root = Json.schema("plan/1").put("status", "nothing_to_cook");
        put(root, first);
        return Json.text(root);
    }

    private static void put(ObjectNode root, EatenFirst first) {
        ArrayNode days = root.putArray("eaten_first");
        first.eatersDays().forEach(day -> {
            ObjectNode node = days.addObject().put("date", day.day().toString()).put("eater", day.eater());
            boxes(node.putArray("containers"), day.boxes());
            node.put("energy_kcal", Json.tenth(day.kcal()))
                    .put("short_kcal", Json.tenth(day.shortKcal()))
                    .put("short_protein_g", Json.tenth(day.shortProteinG()));
        });
        boxes(root.putArray("left_besides"), first.over());
        boxes(root.putArray("past_last_day"), first.past());
    }

    static void boxes(ArrayNode array, List<BoxesLeft.Lot> lots) {
        lots.forEach(lot -> array.addObject()
                .put("dish", lot.boxes().dish())
                .put("eater", lot.boxes().eater())
                .put("count", lot.count())
                .put("from", lot.place().name().toLowerCase(Locale.ROOT))
                .put("until", lot.until().toString()));
    }
}
