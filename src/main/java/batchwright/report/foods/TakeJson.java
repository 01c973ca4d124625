package batchwright.report.foods;

import batchwright.answer.TakenFood;
import batchwright.food.Food;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Lines to paste, for scripts: schema batchwright.take/1. */
public final class TakeJson {
    private TakeJson() {}

    public static String of(List<TakenFood> foods) {
        ObjectNode root = Json.schema("take/1");
        ArrayNode list = root.putArray("foods");
        for (TakenFood food : foods) {
            ObjectNode node = list.addObject()
                    .put("ndb", food.proposal().food().ndb())
                    .put("food", food.proposal().id())
                    .put("description", food.proposal().food().description());
            food.yours().map(Food::id).ifPresentOrElse(id -> node.put("yours", id), () -> node.putNull("yours"));
            ArrayNode check = node.putArray("check");
            food.proposal().guesses().forEach(check::add);
            node.put("catalogue_line", food.line());
            ArrayNode measures = node.putArray("measures_lines");
            food.measures().forEach(measures::add);
        }
        return Json.text(root);
    }
}
