package batchwright.report.shopping;

import batchwright.answer.BuyLine;
import batchwright.answer.DishesUsing;
import batchwright.answer.PlanAnswer;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Lot;
import batchwright.plan.Session;
import batchwright.plan.UseUp;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the cook should know about the pantry: what was taken without buying, what to use up, what is past its date. */
public final class PantryText {
    private final PlanAnswer answer;
    private final Session session;
    private final Commands commands;
    private final Page page;

    /** @param answer with a plan of one cooking session */
    public PantryText(PlanAnswer answer, Commands commands, Page page) {
        this.commands = commands;
        this.answer = answer;
        this.session = answer.plan().orElseThrow().first();
        this.page = page;
    }

    public void write() {
        page.gap();
        say(
                "From the pantry alone: ",
                BuyLine.of(session).stream()
                        .filter(l -> l.pack().isEmpty())
                        .map(l -> l.food().name() + " " + Show.whole(l.usedGrams()) + " g")
                        .toList());
        List<UseUp> useUp = UseUp.of(session);
        say(
                "Use up, besides this plan: ",
                useUp.stream()
                        .map(u -> amount(u.food(), u.grams()) + " by " + u.useBy())
                        .toList());
        useUp.stream().map(UseUp::food).distinct().forEach(this::dishesUsing);
        say("Past its date, not used: ", pastTheirDate());
    }

    private void dishesUsing(Food food) {
        var all = new DishesUsing(answer);
        List<Dish> using = all.of(food);
        if (!using.isEmpty() && !answer.asked().named().isEmpty()) {
            page.paragraph(
                    "    ",
                    "      ",
                    "Dishes with " + food.name() + ": "
                            + using.stream().map(Dish::id).collect(Collectors.joining(", ")) + ". Try: "
                            + commands.line(plan(all.cookedWith(using.get(0)))));
        }
    }

    private String plan(List<Dish> cook) {
        return "plan " + String.join(" ", answer.asked().named()) + " --days " + answer.days()
                + answer.budget()
                        .map(budget ->
                                " --budget " + answer.kitchen().currency().text(budget))
                        .orElse("") + " --cook "
                + cook.stream().map(Dish::id).collect(Collectors.joining(","));
    }

    private List<String> pastTheirDate() {
        List<String> past = new ArrayList<>();
        answer.kitchen().pastTheirDate().forEach((food, lots) -> {
            for (Lot lot : lots) {
                past.add(amount(food, lot.grams()) + " of " + lot.useBy().orElseThrow());
            }
        });
        return past;
    }

    /** 455 g egg (8 large): pieces are counted, as they are at home. */
    private String amount(Food food, BigDecimal grams) {
        return Show.whole(grams) + " g " + food.name()
                + KitchenMeasure.pieces(answer.kitchen(), food, grams.multiply(food.edibleShare()))
                        .map(pieces -> " (" + pieces + ")")
                        .orElse("");
    }

    private void say(String what, List<String> which) {
        if (!which.isEmpty()) {
            page.paragraph("  ", "    ", what + which.stream().collect(Collectors.joining("; ")) + ".");
        }
    }
}
