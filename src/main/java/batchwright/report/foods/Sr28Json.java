package batchwright.report.foods;

import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.reference.Sr28Food;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;

/** A food of USDA SR28 for scripts; values with the source's digits, unknown ones null. */
final class Sr28Json {
    private Sr28Json() {}

    static void put(ObjectNode node, Kitchen kitchen, Sr28Food food) {
        node.put("ndb", food.ndb()).put("description", food.description()).put("group", food.group());
        Sr28Text.yours(kitchen, food).ifPresentOrElse(f -> node.put("food", f.id()), () -> node.putNull("food"));
        ObjectNode nutrients = node.putObject("per_100_g");
        for (Nutrient nutrient : Nutrient.columns()) {
            String name = nutrient.name().toLowerCase(Locale.ROOT) + "_" + nutrient.unit();
            food.amount(nutrient).ifPresentOrElse(value -> nutrients.put(name, value), () -> nutrients.putNull(name));
        }
    }
}
