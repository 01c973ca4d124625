package batchwright.report.plan;

import batchwright.answer.BuyLine;
import batchwright.answer.CoreTemperatures;
import batchwright.answer.DishesUsing;
import batchwright.answer.Leftover;
import batchwright.answer.PlanAnswer;
import batchwright.answer.SaltOfBatch;
import batchwright.answer.SaltOfBatches;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.plan.Batch;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Fill;
import batchwright.plan.Portion;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.plan.UseUp;
import batchwright.report.cooking.CoreTemperaturesJson;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.cooking.Work;
import batchwright.report.foods.PackJson;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalInt;

/** Days, batches, shopping and leftovers of one cooking session, added to those of the whole. */
final class SessionJson {
    private final PlanAnswer answer;
    private final Session session;
    private final OptionalInt number;

    /**
     * @param answer of this session alone
     * @param number by which entries name their session; empty when there is only one
     */
    SessionJson(PlanAnswer answer, OptionalInt number) {
        this.answer = answer;
        this.session = answer.plan().orElseThrow().first();
        this.number = number;
    }

    private Kitchen kitchen() {
        return answer.kitchen();
    }

    private void number(ObjectNode node) {
        number.ifPresent(n -> node.put("session", n));
    }

    /** @param first by which number the cooking day is called */
    void days(ArrayNode days, EaterDays eater, int first) {
        eater.days().forEach(day -> {
            ObjectNode node = days.addObject();
            day(node, eater, day, first);
            number(node);
        });
    }

    private void day(ObjectNode node, EaterDays eater, Day day, int first) {
        node.put("day", day.day() + first - 1);
        ArrayNode containers = node.putArray("containers");
        for (Serving serving : day.servings()) {
            ObjectNode container = containers
                    .addObject()
                    .put("dish", session.request().left().origin(serving.dish()))
                    .put("count", serving.count())
                    .put("from", serving.from().name().toLowerCase(Locale.ROOT));
            session.request().left().of(serving.dish()).ifPresent(left -> {
                container.put("left", true).put("of", left.eater());
                container.put("energy_kcal", Json.tenth(left.holds().get(Nutrient.ENERGY)));
            });
        }
        ArrayNode snacks = node.putArray("snacks");
        day.snacks().forEach(snack -> Json.snack(snacks, snack));
        ArrayNode always = node.putArray("always");
        day.always().forEach(snack -> Json.snack(always, snack));
        node.set("totals", Json.totals(session.totals(eater.seat().eater(), day)));
    }

    void batches(ArrayNode batches) {
        session.batches().forEach(batch -> {
            ObjectNode node = batches.addObject();
            batch(node, batch);
            number(node);
        });
    }

    private void batch(ObjectNode node, Batch batch) {
        node.put("dish", batch.dish().id()).put("name", batch.dish().name()).put("containers", batch.containers());
        var work = Work.of(answer.schedule().orElseThrow(), batch);
        node.put("minutes", work.minutes()).put("hands_on_minutes", work.handsOn());
        ArrayNode dayBefore = node.putArray("day_before");
        work.dayBefore().forEach(dayBefore::add);
        ArrayNode ingredients = node.putArray("ingredients");
        batch.ingredients().forEach((food, grams) -> {
            ObjectNode ingredient =
                    ingredients.addObject().put("food", food.id()).put("grams", Json.tenth(grams));
            Json.text(ingredient, "measure", KitchenMeasure.text(kitchen(), food, grams));
        });
        ArrayNode swaps = node.putArray("swaps");
        batch.dish()
                .swaps()
                .forEach(swap -> Json.text(
                        swaps.addObject().put("food", swap.food().id()),
                        "by",
                        swap.by().map(Food::id)));
        CoreTemperaturesJson.put(
                node.putArray("core_temperatures"),
                CoreTemperatures.of(batch.ingredients().keySet()));
        ArrayNode fat = node.putArray("fat_poured_off");
        batch.fatToPourOff()
                .forEach((part, grams) ->
                        fat.addObject().put("part", part.name()).put("grams", Json.tenth(grams)));
        SaltOfBatch salt = SaltOfBatches.of(session).get(batch.dish());
        if (salt == null) {
            node.putNull("salt_to_add_most_g").putNull("salt_g");
        } else {
            node.put("salt_to_add_most_g", salt.most()).put("salt_g", Json.tenth(salt.grams()));
        }
        ArrayNode fills = node.putArray("fills");
        batch.fills().forEach(fill -> fill(fills.addObject(), fill));
    }

    private static void fill(ObjectNode node, Fill fill) {
        fill.eater().ifPresentOrElse(e -> node.put("eater", e.id()), () -> node.putNull("eater"));
        node.put("containers", fill.containers());
        ArrayNode parts = node.putArray("parts");
        for (Portion portion : fill.portions()) {
            ObjectNode part = parts.addObject()
                    .put("part", portion.part().name())
                    .put("raw_g", portion.rawGrams())
                    .put("cooked_g", portion.cookedGrams());
            if (portion.part().pieces()) {
                part.put("pieces", portion.pieces());
            } else {
                part.putNull("pieces");
            }
        }
        node.set("per_container", Json.totals(fill.perContainer()));
        node.put("cooked_g", Json.tenth(fill.perContainer().get(Nutrient.COOKED_WEIGHT)));
        node.put("volume_ml", Json.tenth(fill.perContainer().get(Nutrient.VOLUME)));
    }

    void shopping(ArrayNode shopping) {
        BuyLine.of(session).forEach(line -> {
            ObjectNode node = shopping.addObject();
            buy(node, line);
            number(node);
        });
    }

    void leftovers(ArrayNode leftovers) {
        Leftover.of(session).forEach(left -> {
            ObjectNode node = leftovers.addObject();
            node.put("food", left.food().id());
            node.put("grams", Show.plain(left.grams(), 1));
            node.put("worth_minor", left.worth().minor());
            node.put("becomes", left.lasts() ? "stock" : "waste");
            number(node);
        });
    }

    private void buy(ObjectNode node, BuyLine line) {
        node.put("food", line.food().id());
        node.put("pack_g", line.pack().map(p -> Show.plain(p.grams(), 2)).orElse(BigDecimal.ZERO));
        node.put("packs", line.packs());
        node.put("price_minor", line.pack().map(p -> p.price().minor()).orElse(0L));
        node.put("cost_minor", line.cost().minor());
        node.put("from_pantry_g", Show.plain(line.fromPantryGrams(), 1));
        node.put("used_g", Show.plain(line.usedGrams(), 1));
        node.put("left_g", Show.plain(line.leftGrams(), 1));
        line.pack()
                .ifPresentOrElse(
                        p -> {
                            node.put("shop", p.shop()).put("pack", p.label());
                            PackJson.put(node, p, kitchen().cookingDay());
                        },
                        () -> {
                            node.putNull("shop").putNull("pack");
                            PackJson.none(node);
                        });
    }

    void useUp(ArrayNode useUp) {
        UseUp.of(session).forEach(u -> {
            ObjectNode node = useUp.addObject();
            lot(node, u.food(), u.grams(), u.useBy());
            ArrayNode dishes = node.putArray("dishes");
            new DishesUsing(answer).of(u.food()).forEach(dish -> dishes.add(dish.id()));
            number(node);
        });
    }

    static void lot(ObjectNode node, Food food, BigDecimal grams, LocalDate useBy) {
        node.put("food", food.id()).put("grams", Show.plain(grams, 1)).put("use_by", useBy.toString());
    }
}
