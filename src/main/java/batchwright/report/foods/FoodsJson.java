package batchwright.report.foods;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Pack;
import batchwright.food.PriceRank;
import batchwright.food.UnitPrice;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Foods for scripts: schema batchwright.foods/1. Unknown values are null; those that may be more are named as incomplete. */
public final class FoodsJson {
    private FoodsJson() {}

    public static String of(Kitchen kitchen, List<Food> foods) {
        return Json.text(root(kitchen, foods));
    }

    /** Ranked foods first to last; those without a price separately, by their ids. */
    public static String compared(Kitchen kitchen, PriceRank rank) {
        ObjectNode root =
                root(kitchen, rank.prices().stream().map(p -> p.pack().food()).toList());
        root.put("by", rank.by().name().toLowerCase(Locale.ROOT));
        ArrayNode cheapest = root.putArray("cheapest");
        rank.prices()
                .forEach(price -> cheapest.addObject()
                        .put("food", price.pack().food().id())
                        .put("shop", price.pack().shop())
                        .put("pack", price.pack().label())
                        .put("seen", price.pack().seen().toString()));
        ArrayNode without = root.putArray("no_price");
        rank.withoutPrice().forEach(food -> without.add(food.id()));
        return Json.text(root);
    }

    static ObjectNode root(Kitchen kitchen, List<Food> foods) {
        ObjectNode root =
                Json.schema("foods/1").put("currency", kitchen.currency().code());
        ArrayNode list = root.putArray("foods");
        foods.forEach(food -> food(list.addObject(), kitchen, food));
        return root;
    }

    private static void nutrients(ObjectNode node, Nutrients per100g) {
        ObjectNode amounts = node.putObject("per_100_g");
        ArrayNode incomplete = node.putArray("incomplete");
        for (Nutrient nutrient : Nutrient.ofFoods()) {
            String name = nutrient.name().toLowerCase(Locale.ROOT) + "_" + nutrient.unit();
            if (per100g.isKnown(nutrient)) {
                amounts.put(name, Show.plain(per100g.get(nutrient), 3));
            } else {
                amounts.putNull(name);
            }
            if (!per100g.isComplete(nutrient)) {
                incomplete.add(name);
            }
        }
    }

    /** Null where nothing is said of them. */
    private static void origins(ObjectNode node, Food food) {
        if (food.origins().known()) {
            ArrayNode certain = node.putArray("origins");
            food.origins().certain().forEach(origin -> certain.add(origin.id()));
            ArrayNode doubtful = node.putArray("origins_in_doubt");
            food.origins().doubtful().forEach(origin -> doubtful.add(origin.id()));
        } else {
            node.putNull("origins").putNull("origins_in_doubt");
        }
        ArrayNode takenOff = node.putArray("taken_off");
        food.takenOff().forEach(part -> takenOff.add(part.id()));
    }

    private static void food(ObjectNode node, Kitchen kitchen, Food food) {
        node.put("food", food.id()).put("name", food.name()).put("group", food.group());
        food.ndb().ifPresentOrElse(ndb -> node.put("usda_ndb", ndb), () -> node.putNull("usda_ndb"));
        node.put("description", food.description());
        nutrients(node, food.per100g());
        node.put("refuse_percent", Show.plain(food.refusePercent(), 2)).put("perishable", food.perishable());
        ArrayNode allergens = node.putArray("allergens");
        food.allergens().forEach(a -> allergens.add(a.id()));
        origins(node, food);
        node.put("pantry_g", Show.plain(kitchen.pantryGrams(food), 2));
        ArrayNode lots = node.putArray("lots");
        kitchen.lotsOf(food).forEach(lot -> {
            ObjectNode at = lots.addObject().put("grams", Show.plain(lot.grams(), 2));
            lot.useBy().ifPresentOrElse(day -> at.put("use_by", day.toString()), () -> at.putNull("use_by"));
        });
        Optional<UnitPrice> price = UnitPrice.of(kitchen, food);
        Json.money(node, "per_1000_kcal_minor", price.flatMap(p -> p.of(Nutrient.ENERGY, FoodsText.KCAL_COMPARED)));
        Json.money(
                node,
                "per_30_g_protein_minor",
                price.flatMap(p -> p.of(Nutrient.PROTEIN, FoodsText.PROTEIN_COMPARED_G)));
        ArrayNode packs = node.putArray("packs");
        kitchen.packsOf(food).forEach(pack -> pack(packs.addObject(), pack, kitchen.cookingDay()));
        ArrayNode measures = node.putArray("measures");
        kitchen.measuresOf(food)
                .forEach(measure -> measures.addObject()
                        .put("measure", measure.name())
                        .put("grams", Show.plain(measure.grams(), 3))
                        .put("snack_max", measure.snackMost()));
    }

    /** Grams and price are those on the shelf; loose goods are bought in steps of unit_g. */
    private static void pack(ObjectNode node, Pack pack, LocalDate cookingDay) {
        node.put("shop", pack.shop())
                .put("pack", pack.label())
                .put("grams", Show.plain(pack.tag().grams(), 2))
                .put("price_minor", pack.tag().price().minor());
        PackJson.put(node, pack, cookingDay);
        node.put("note", pack.note());
    }
}
