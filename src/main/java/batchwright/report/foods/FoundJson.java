package batchwright.report.foods;

import batchwright.food.Kitchen;
import batchwright.reference.find.FoundFoods;
import batchwright.report.print.Json;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** Foods that were searched for, for scripts: schema batchwright.foods/1. */
public final class FoundJson {
    private FoundJson() {}

    /** @param most so many foods of USDA SR28 are given */
    public static String of(Kitchen kitchen, FoundFoods found, int most) {
        ObjectNode root = FoodsJson.root(kitchen, found.yours());
        ObjectNode sr28 = root.putObject("sr28").put("count", found.reference().size());
        ArrayNode list = sr28.putArray("foods");
        found.reference().stream().limit(most).forEach(food -> Sr28Json.put(list.addObject(), kitchen, food));
        root.put("match", found.isEmpty() ? "none" : found.match().name().toLowerCase(Locale.ROOT));
        root.put("read_as", found.readAs());
        ObjectNode best = root.putObject("best");
        if (found.yoursFirst()) {
            best.put("food", found.yours().get(0).id());
        } else {
            found.reference().stream().findFirst().ifPresent(food -> best.put("usda_ndb", food.ndb()));
        }
        return Json.text(root);
    }
}
