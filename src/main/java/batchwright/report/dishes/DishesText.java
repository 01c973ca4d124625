package batchwright.report.dishes;

import batchwright.answer.CoreTemperatures;
import batchwright.answer.DishAllergens;
import batchwright.answer.FoodSafety;
import batchwright.answer.OneContainer;
import batchwright.food.CoreTemperature;
import batchwright.food.Dish;
import batchwright.food.Ingredient;
import batchwright.food.Kitchen;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.food.Part;
import batchwright.food.Staple;
import batchwright.food.Step;
import batchwright.plan.Batch;
import batchwright.quantity.Money;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.cooking.StepView;
import batchwright.report.cooking.SwapWords;
import batchwright.report.cooking.Work;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import batchwright.schedule.Schedule;
import batchwright.schedule.StepWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One dish in full, for people. */
public final class DishesText {
    private final Kitchen kitchen;
    private final Page page = new Page();

    private DishesText(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    public static String one(Kitchen kitchen, Dish dish) {
        return new DishesText(kitchen).full(dish);
    }

    private static String kind(Dish dish) {
        return dish.kind().name().toLowerCase(Locale.ROOT);
    }

    private String cost(Optional<Money> cost) {
        return Show.money(cost, kitchen.currency());
    }

    private String full(Dish dish) {
        page.paragraph(dish.name() + " (" + dish.id() + ")");
        page.paragraph(Show.capital(kind(dish)) + "; keeps " + Show.count(dish.fridgeDays(), "day", "days")
                + " in the fridge, the cooking day being day 1; "
                + (dish.freezes() ? "freezes." : "does not freeze."));
        parts(dish);
        containers(dish);
        page.heading("Allergens");
        page.paragraph("  ", "  ", Show.capital(DishAllergens.text(dish)));
        steps(dish);
        page.heading("Reheat");
        page.paragraph("  ", "  ", dish.reheat());
        page.heading("Food safety");
        CoreTemperatures.of(dish.foods())
                .says()
                .ifPresent(says -> page.paragraph("  ", "    ", says + " [" + CoreTemperature.SOURCE + "]"));
        FoodSafety.of(dish)
                .forEach(caution -> page.paragraph("  ", "    ", caution.text() + " [" + caution.source() + "]"));
        return page.toString();
    }

    private void parts(Dish dish) {
        page.heading("Parts, raw edible g in a container");
        var table = new TextTable("  ")
                .left("part")
                .right("least")
                .right("most")
                .left("")
                .left("mix");
        for (Part part : dish.parts()) {
            table.row(
                    part.name(),
                    Integer.toString(part.leastGrams()),
                    Integer.toString(part.mostGrams()),
                    choices(part),
                    mix(part));
        }
        page.table(table);
        if (!dish.staples().isEmpty()) {
            page.paragraph(
                    "  ",
                    "    ",
                    "Always at home: "
                            + dish.staples().stream().map(Staple::name).collect(Collectors.joining(", ")) + ".");
        }
    }

    private String mix(Part part) {
        String mix = part.mix().stream().map(this::ingredient).collect(Collectors.joining("; "));
        return part.fatPouredOff().isNone()
                ? mix
                : mix + "; of its fat " + Show.plainText(part.fatPouredOff().grams(), 1) + " g is poured off";
    }

    private static String choices(Part part) {
        List<String> choices = new ArrayList<>();
        if (part.optional()) {
            choices.add("or none");
        }
        if (part.pieces()) {
            choices.add("pieces of " + part.stepGrams() + " g");
        }
        return String.join(", ", choices);
    }

    /** Olive oil 27 g (2 tbsp); lentils, dry 75 g, boiled. */
    private String ingredient(Ingredient ingredient) {
        return ingredient.food().name() + " " + Show.plainText(ingredient.amount(), 1) + " g"
                + KitchenMeasure.text(kitchen, ingredient)
                        .map(m -> " (" + m + ")")
                        .orElse("")
                + ingredient.cooked().map(c -> ", " + c.method()).orElse("")
                + SwapWords.choices(ingredient);
    }

    private void containers(Dish dish) {
        page.heading("One container");
        var table = new TextTable("  ")
                .left("")
                .left("optional\nparts")
                .right("kcal")
                .right("protein\ng")
                .right("fat\ng")
                .right("carb\ng")
                .right("fibre\ng")
                .right("fruit+veg\ng")
                .right("cost\n" + kitchen.currency());
        boolean choice = dish.parts().stream().anyMatch(Part::optional);
        for (OneContainer.Size size : OneContainer.Size.values()) {
            if (choice) {
                row(table, OneContainer.of(dish, size, false), "without");
            }
            row(table, OneContainer.of(dish, size, true), choice ? "with" : "none");
        }
        page.table(table);
        Show.atLeastNote(page, table);
        page.paragraph("  ", "  ", "Cost by the unit price of the cheapest packs; the checkout wants whole packs.");
    }

    private void row(TextTable table, OneContainer one, String optional) {
        Nutrients holds = one.nutrients();
        table.row(
                one.size().name().toLowerCase(Locale.ROOT),
                optional,
                Show.cell(holds, Nutrient.ENERGY),
                Show.cell(holds, Nutrient.PROTEIN),
                Show.cell(holds, Nutrient.FAT),
                Show.cell(holds, Nutrient.CARBOHYDRATE),
                Show.cell(holds, Nutrient.FIBRE),
                Show.cell(holds, Nutrient.FRUIT_VEG),
                cost(one.cost(kitchen)));
    }

    private void steps(Dish dish) {
        if (dish.steps().isEmpty()) {
            return;
        }
        Batch usual = Work.usual(dish);
        Schedule schedule = Schedule.of(List.of(usual), kitchen.equipment());
        Map<Integer, StepView> views = new HashMap<>();
        StepView.all(usual, schedule)
                .forEach(view -> view.step().number().ifPresent(number -> views.put(number, view)));
        page.heading("Steps: " + Work.of(schedule, usual).says());
        int number = 1;
        for (Step step : dish.steps()) {
            page.paragraph(
                    "  " + number + ". ",
                    "     ",
                    step.text() + " (" + says(step, Schedule.work(usual, step, kitchen.equipment()), views.get(number))
                            + ")");
            number++;
        }
        page.paragraph(
                "  ",
                "  ",
                "For " + Step.FOR_CONTAINERS
                        + " middling containers with every part, in this kitchen; filling and washing"
                        + " up are counted. Grams are of all of them.");
        Work.note(List.of(dish)).ifPresent(note -> page.paragraph("  ", "  ", note));
        kitchen.equipment()
                .obstacle(dish)
                .ifPresent(step -> page.paragraph("  ", "    ", DishWords.obstacle(dish, step)));
    }

    /** @param view of a step of the cooking day */
    private static String says(Step step, StepWork work, @Nullable StepView view) {
        List<String> words = new ArrayList<>();
        words.add(view == null ? work.minutes() + " min, the evening before" : view.minutes());
        if (view != null && view.step().celsius().isPresent()) {
            words.add(oven(view.step().celsius().getAsInt()));
        }
        if (!step.parts().isEmpty()) {
            words.add("only with " + String.join(" or ", step.parts()));
        }
        if (view != null && !view.says().isEmpty()) {
            words.add(view.says());
        }
        return String.join("; ", words);
    }

    /** Ovens are set in steps of 5 F. */
    private static String oven(int celsius) {
        BigDecimal fahrenheit = BigDecimal.valueOf(Math.round((celsius * 9 / 5.0 + 32) / 5) * 5);
        return celsius + " C (" + fahrenheit.toPlainString() + " F)";
    }
}
