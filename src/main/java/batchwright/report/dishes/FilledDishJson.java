package batchwright.report.dishes;

import batchwright.answer.FilledDish;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishHint;
import batchwright.plan.DishRequest;
import batchwright.plan.EnergyBand;
import batchwright.plan.Plan;
import batchwright.plan.Reach;
import batchwright.report.cooking.KitchenClock;
import batchwright.report.needs.NeedsJson;
import batchwright.report.plan.PlanJson;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Containers of one dish for scripts: schema batchwright.dish/1. What it shares with a plan (proof, batch, shopping, audit) has
 * the fields of batchwright.plan/1, with null as the eater.
 */
public final class FilledDishJson {
    private final FilledDish filled;
    private final DishRequest request;
    private final ObjectNode root = Json.schema("dish/1");

    private FilledDishJson(FilledDish filled) {
        this.filled = filled;
        this.request = filled.request();
    }

    public static String of(FilledDish filled) {
        return new FilledDishJson(filled).text();
    }

    private String text() {
        ObjectNode plan = PlanJson.object(filled.asPlan(), KitchenClock.FROM_ZERO);
        Dish dish = request.dish();
        root.put("status", filled.answer().status().name().toLowerCase(Locale.ROOT));
        root.set("proof", plan.get("proof"));
        root.put("currency", request.kitchen().currency().code());
        Json.money(root, "cost_minor", filled.answer().plan().map(Plan::cost));
        Json.money(root, "budget_minor", request.budget());
        root.put("dish", dish.id()).put("name", dish.name());
        root.put("containers", request.containers());
        asked();
        JsonNode batch = plan.at("/batches/0");
        root.set("batch", batch.isMissingNode() ? root.nullNode() : batch);
        root.set("shopping", plan.get("shopping"));
        root.put("fridge_days", dish.fridgeDays())
                .put("freezes", dish.freezes())
                .put("reheat", dish.reheat());
        ArrayNode allergens = root.putArray("allergens");
        dish.allergens().forEach(a -> allergens.add(a.id()));
        ObjectNode reach = root.putObject("container_reach");
        reach(reach, "energy_kcal", Nutrient.ENERGY);
        reach(reach, "protein_g", Nutrient.PROTEIN);
        reach(reach, "fat_g", Nutrient.FAT);
        ArrayNode hints = root.putArray("hints");
        filled.answer().hints().forEach(hint -> hint(hints.addObject(), hint));
        root.set("audit", plan.get("audit"));
        ArrayNode cautions = root.putArray("cautions");
        filled.notices().forEach(notice -> NeedsJson.caution(cautions.addObject(), notice.caution()));
        return Json.text(root);
    }

    private void asked() {
        ContainerWish wish = request.wish();
        ObjectNode asked = root.putObject("asked");
        ObjectNode energy = asked.putObject("energy_kcal");
        number(energy, "min", wish.energy().map(EnergyBand::leastKcal));
        number(energy, "aim", wish.energy().map(EnergyBand::aimKcal));
        number(energy, "max", wish.energy().map(EnergyBand::mostKcal));
        number(asked.putObject("protein_g"), "min", wish.proteinLeastG());
        number(asked.putObject("fat_g"), "max", wish.fatMostG());
        names(asked.putArray("with"), request.with());
        names(asked.putArray("without"), request.without());
        asked.put("pantry", request.pantry());
    }

    private static void number(ObjectNode node, String name, Optional<BigDecimal> value) {
        value.ifPresentOrElse(v -> node.put(name, Show.plain(v, 4)), () -> node.putNull(name));
    }

    private static void names(ArrayNode node, Collection<String> names) {
        new TreeSet<>(names).forEach(node::add);
    }

    private void reach(ObjectNode node, String name, Nutrient nutrient) {
        Reach reach = filled.reach(nutrient);
        node.putObject(name).put("min", Json.tenth(reach.least())).put("max", Json.tenth(reach.most()));
    }

    private static void hint(ObjectNode node, DishHint hint) {
        node.put("kind", hint.kind().name().toLowerCase(Locale.ROOT));
        node.put("what", hint.what());
        node.put("reached", Show.plain(hint.reached(), 2));
        hint.tryThis().ifPresentOrElse(other -> node.put("try", DishWords.command(other)), () -> node.putNull("try"));
    }
}
