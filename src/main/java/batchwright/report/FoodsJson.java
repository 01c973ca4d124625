package batchwright.report;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.UnitPrice;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Foods for scripts: schema batchwright.foods/1. Unknown values are null. */
public final class FoodsJson {
    private FoodsJson() {}

    public static String of(Kitchen kitchen, List<Food> foods) {
        ObjectNode root = Json.schema("foods/1").put("currency", kitchen.currency());
        ArrayNode list = root.putArray("foods");
        foods.forEach(food -> food(list.addObject(), kitchen, food));
        return Json.text(root);
    }

    private static void food(ObjectNode node, Kitchen kitchen, Food food) {
        node.put("food", food.id()).put("name", food.name()).put("group", food.group());
        food.ndb().ifPresentOrElse(ndb -> node.put("usda_ndb", ndb), () -> node.putNull("usda_ndb"));
        node.put("description", food.description());
        ObjectNode nutrients = node.putObject("per_100_g");
        for (Nutrient nutrient : Nutrient.values()) {
            String name = nutrient.name().toLowerCase(Locale.ROOT) + "_" + nutrient.unit();
            if (food.per100g().isComplete(nutrient)) {
                nutrients.put(name, Show.plain(food.per100g().get(nutrient), 3));
            } else {
                nutrients.putNull(name);
            }
        }
        node.put("refuse_percent", Show.plain(food.refusePercent(), 2)).put("perishable", food.perishable());
        ArrayNode allergens = node.putArray("allergens");
        food.allergens().forEach(a -> allergens.add(a.id()));
        node.put("pantry_g", Show.plain(kitchen.pantryGrams(food), 2));
        Optional<UnitPrice> price = UnitPrice.of(kitchen, food);
        Json.money(node, "per_1000_kcal_minor", price.flatMap(p -> p.of(Nutrient.ENERGY, FoodsText.KCAL_COMPARED)));
        Json.money(
                node,
                "per_30_g_protein_minor",
                price.flatMap(p -> p.of(Nutrient.PROTEIN, FoodsText.PROTEIN_COMPARED_G)));
        ArrayNode packs = node.putArray("packs");
        kitchen.packsOf(food)
                .forEach(pack -> packs.addObject()
                        .put("shop", pack.shop())
                        .put("pack", pack.label())
                        .put("grams", Show.plain(pack.grams(), 2))
                        .put("price_minor", pack.price().minor())
                        .put("seen", pack.seen().toString())
                        .put("note", pack.note()));
        ArrayNode measures = node.putArray("measures");
        kitchen.measuresOf(food)
                .forEach(measure -> measures.addObject()
                        .put("measure", measure.name())
                        .put("grams", Show.plain(measure.grams(), 3))
                        .put("snack_max", measure.snackMost()));
    }
}
