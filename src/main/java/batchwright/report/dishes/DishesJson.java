package batchwright.report.dishes;

import batchwright.answer.CoreTemperatures;
import batchwright.answer.FoodSafety;
import batchwright.answer.OneContainer;
import batchwright.food.Appliance;
import batchwright.food.CookedYield;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.food.Shelves;
import batchwright.food.Step;
import batchwright.food.Way;
import batchwright.plan.Batch;
import batchwright.report.cooking.CoreTemperaturesJson;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.cooking.StepJson;
import batchwright.report.cooking.StepView;
import batchwright.report.cooking.Work;
import batchwright.report.needs.NeedsJson;
import batchwright.report.print.Json;
import batchwright.report.print.Show;
import batchwright.schedule.Schedule;
import batchwright.schedule.StepWork;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Dishes for scripts: schema batchwright.dishes/1. */
public final class DishesJson {
    private DishesJson() {}

    /** All of a kitchen, in an order. */
    public static String all(Kitchen kitchen, DishOrder order) {
        return of(
                kitchen,
                order
                        .sorted(kitchen.allDishes().stream()
                                .map(dish -> DishLine.of(kitchen, dish))
                                .toList())
                        .stream()
                        .map(DishLine::dish)
                        .toList());
    }

    public static String of(Kitchen kitchen, Collection<Dish> dishes) {
        ObjectNode root =
                Json.schema("dishes/1").put("currency", kitchen.currency().code());
        ArrayNode list = root.putArray("dishes");
        dishes.forEach(dish -> dish(list.addObject(), kitchen, dish));
        return Json.text(root);
    }

    private static void dish(ObjectNode node, Kitchen kitchen, Dish dish) {
        node.put("dish", dish.id())
                .put("name", dish.name())
                .put("shelf", kitchen.shelves().shelfOf(dish).orElse(Shelves.EVERYDAY))
                .put("kind", dish.kind().name().toLowerCase(Locale.ROOT))
                .put("fridge_days", dish.fridgeDays())
                .put("freezes", dish.freezes())
                .put("reheat", dish.reheat());
        ArrayNode parts = node.putArray("parts");
        dish.parts().forEach(part -> part(parts.addObject(), kitchen, part));
        ArrayNode staples = node.putArray("staples");
        dish.staples().forEach(staple -> staples.add(staple.name()));
        ArrayNode allergens = node.putArray("allergens");
        dish.allergens().forEach(a -> allergens.add(a.id()));
        ArrayNode byStaples = node.putArray("staple_allergens");
        dish.staples().stream().filter(staple -> !staple.allergens().isEmpty()).forEach(staple -> {
            ArrayNode told = byStaples.addObject().put("staple", staple.name()).putArray("allergens");
            staple.allergens().forEach(a -> told.add(a.id()));
        });
        steps(node.putArray("steps"), kitchen, dish);
        DishLine line = DishLine.of(kitchen, dish);
        node.put("minutes", line.work().minutes())
                .put("hands_on_minutes", line.work().handsOn());
        ArrayNode needs = node.putArray("needs");
        line.needs().forEach(appliance -> needs.add(appliance.id()));
        Json.text(
                node, "not_in_this_kitchen", kitchen.equipment().obstacle(dish).map(Step::text));
        CoreTemperaturesJson.put(node.putArray("core_temperatures"), CoreTemperatures.of(dish.foods()));
        ArrayNode cautions = node.putArray("cautions");
        FoodSafety.of(dish).forEach(caution -> NeedsJson.caution(cautions.addObject(), caution));
        ArrayNode containers = node.putArray("containers");
        for (OneContainer.Size size : OneContainer.Size.values()) {
            container(containers.addObject(), kitchen, OneContainer.of(dish, size, false));
            container(containers.addObject(), kitchen, OneContainer.of(dish, size, true));
        }
    }

    private static void part(ObjectNode node, Kitchen kitchen, Part part) {
        node.put("part", part.name())
                .put("optional", part.optional())
                .put("least_g", part.leastGrams())
                .put("most_g", part.mostGrams())
                .put("step_g", part.stepGrams())
                .put("pieces", part.pieces())
                .put("fat_poured_off_g", Show.plain(part.fatPouredOff().grams(), 2));
        ArrayNode mix = node.putArray("mix");
        part.mix().forEach(i -> {
            ObjectNode ingredient = mix.addObject().put("food", i.food().id()).put("grams", Show.plain(i.amount(), 2));
            Json.text(ingredient, "measure", KitchenMeasure.text(kitchen, i));
            Json.text(ingredient, "cooked", i.cooked().map(CookedYield::method));
            ArrayNode or = ingredient.putArray("or");
            i.instead().others().forEach(other -> or.add(other.food().id()));
            ingredient.put("or_leave_out", i.instead().nothing());
        });
    }

    /** Minutes are those of five middling containers with every part, in this kitchen. */
    private static void steps(ArrayNode steps, Kitchen kitchen, Dish dish) {
        Batch usual = Work.usual(dish);
        Map<Integer, StepView> views = new HashMap<>();
        StepView.all(usual, Schedule.of(List.of(usual), kitchen.equipment()))
                .forEach(view -> view.step().number().ifPresent(number -> views.put(number, view)));
        for (int number = 1; number <= dish.steps().size(); number++) {
            Step step = dish.steps().get(number - 1);
            StepWork work = Schedule.work(usual, step, kitchen.equipment());
            step(steps.addObject(), step, work, Optional.ofNullable(views.get(number)));
        }
    }

    private static void step(ObjectNode node, Step step, StepWork work, Optional<StepView> view) {
        Way way = step.way();
        node.put("do", step.text())
                .put("minutes", work.minutes())
                .put("hands_on", work.minutes() == work.handsOnMinutes())
                .put("hands_on_minutes", work.handsOnMinutes())
                .put("day_before", step.dayBefore());
        Json.text(node, "uses", way.on().map(Appliance::id));
        number(node, "celsius", way.celsius().stream().boxed().findFirst());
        node.put("shelves", way.uses(Appliance.OVEN) ? way.shelves() : 0);
        step.after().forEach(node.putArray("after")::add);
        node.put("fills", step.fills());
        step.parts().forEach(node.putArray("parts")::add);
        ArrayNode with = node.putArray("with");
        view.ifPresent(v -> v.amounts().forEach(amount -> StepJson.amount(with.addObject(), amount)));
        node.put("follows_laws", !step.isForFive());
    }

    private static void number(ObjectNode node, String key, Optional<Integer> number) {
        number.ifPresentOrElse(n -> node.put(key, n), () -> node.putNull(key));
    }

    private static void container(ObjectNode node, Kitchen kitchen, OneContainer one) {
        node.put("size", one.size().name().toLowerCase(Locale.ROOT)).put("optional_parts", one.optional());
        Json.money(node, "cost_minor", one.cost(kitchen));
        node.set("totals", Json.totals(one.nutrients()));
    }
}
