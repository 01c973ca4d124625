package batchwright.report.dishes;

import batchwright.answer.FilledDish;
import batchwright.answer.OneContainer;
import batchwright.food.Dish;
import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.plan.ContainerWish;
import batchwright.plan.DishAnswer;
import batchwright.plan.DishRequest;
import batchwright.plan.Fill;
import batchwright.plan.Plan;
import batchwright.quantity.Currency;
import batchwright.report.cooking.CookText;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import batchwright.report.shopping.BuyText;
import batchwright.schedule.Schedule;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Containers of one dish for people: the answer in one sentence, what goes into each, what to cook and buy, how to keep it. */
public final class FilledDishText {
    private final FilledDish filled;
    private final Commands commands;
    private final DishRequest request;
    private final Dish dish;
    private final Page page = new Page();

    private FilledDishText(FilledDish filled, Commands commands) {
        this.commands = commands;
        this.filled = filled;
        this.request = filled.request();
        this.dish = request.dish();
    }

    public static String of(FilledDish filled, Commands commands) {
        return new FilledDishText(filled, commands).text();
    }

    private String text() {
        filled.answer().plan().ifPresentOrElse(this::plan, () -> new NotFilledText(filled, commands, page).write());
        return page.toString();
    }

    private void plan(Plan plan) {
        Fill fill = plan.batches().get(0).fills().get(0);
        answer(plan, fill);
        var cook = new CookText(
                plan.first(), Schedule.of(plan.batches(), request.kitchen().equipment()), page);
        page.heading("FILL");
        cook.fill(fill);
        holds(fill.perContainer());
        page.heading("COOK");
        cook.work(plan.batches().get(0));
        cook.raw(plan.batches().get(0));
        cook.minutesNote();
        page.heading("KEEP");
        keep();
        new BuyText(filled.asPlan(), commands, page).write();
        unitPrice(fill);
        proof(plan);
        page.heading("CAUTIONS");
        filled.notices().forEach(notice -> page.item(notice.caution().text()));
        page.gap().paragraph("", "  ", commands.shows(List.of(dish.id())));
    }

    private void answer(Plan plan, Fill fill) {
        Nutrients holds = fill.perContainer();
        String cost = plan.cost().minor() == 0 ? "nothing to buy" : Show.money(plan.cost(), currency()) + " to buy";
        page.paragraph(Show.count(fill.containers(), "container", "containers") + " of " + dish.name() + " ("
                + dish.id()
                + "), each " + Show.amount(holds, Nutrient.ENERGY) + " kcal, " + Show.amount(holds, Nutrient.PROTEIN)
                + " g protein: " + cost
                + Show.budget(request.budget(), currency())
                + (isProven() ? ", proven cheapest." : ", not proven cheapest."));
    }

    private boolean isProven() {
        return filled.answer().status() == DishAnswer.Status.FILLED;
    }

    private Currency currency() {
        return request.kitchen().currency();
    }

    private void holds(Nutrients holds) {
        var table = new TextTable("    ")
                .left("a container")
                .right("kcal")
                .right("protein\ng")
                .right("fat\ng")
                .right("carb\ng")
                .right("fibre\ng")
                .right("fruit+veg\ng");
        ContainerWish wish = request.wish();
        table.row(
                "asked",
                wish.energy().map(DishWords::band).orElse(""),
                wish.proteinLeastG()
                        .map(least -> "min " + Show.plainText(least, 1))
                        .orElse(""),
                wish.fatMostG().map(most -> "max " + Show.plainText(most, 1)).orElse(""),
                "",
                "",
                "");
        List<Nutrient> shown = List.of(
                Nutrient.ENERGY,
                Nutrient.PROTEIN,
                Nutrient.FAT,
                Nutrient.CARBOHYDRATE,
                Nutrient.FIBRE,
                Nutrient.FRUIT_VEG);
        table.row(Stream.concat(Stream.of("holds"), shown.stream().map(n -> Show.amount(holds, n)))
                .toArray(String[]::new));
        page.gap().table(table);
        String incomplete = shown.stream()
                .filter(n -> !holds.isComplete(n))
                .map(Nutrient::label)
                .collect(Collectors.joining(", "));
        if (!incomplete.isEmpty()) {
            page.paragraph(
                    "    ",
                    "    ",
                    "The figures for " + incomplete + " are at least so much: not every food has a value.");
        }
    }

    private void keep() {
        int beyond = filled.beyondFridge();
        String keeps = "Keeps " + Show.count(dish.fridgeDays(), "day", "days")
                + " in the fridge, the cooking day being day 1; ";
        String all = request.containers() == 1 ? "it" : "all " + request.containers();
        String then;
        if (!dish.freezes()) {
            then = "does not freeze: eat " + all + " by then" + (beyond > 0 ? ", more than one a day." : ".");
        } else if (beyond > 0) {
            then = "at one a day, freeze " + beyond + " of the " + request.containers() + " on the cooking day.";
        } else {
            then = "what you eat later, freeze on the cooking day.";
        }
        page.paragraph("  ", "  ", keeps + then);
        page.paragraph("  ", "  ", "Reheat: " + dish.reheat());
    }

    private void unitPrice(Fill fill) {
        OneContainer.cost(request.kitchen(), fill.portions())
                .map(currency()::text)
                .ifPresent(cost -> page.paragraph(
                        "  ",
                        "    ",
                        "The food in a container, at home or bought, is worth " + cost + " " + currency()
                                + " by the unit price of the cheapest packs."));
    }

    private void proof(Plan plan) {
        page.heading("PROOF");
        String solved = Show.count((int) Math.min(plan.proof().nodes(), Integer.MAX_VALUE), "relaxation", "relaxations")
                + " solved.";
        page.paragraph(
                "  ",
                "  ",
                isProven()
                        ? "No other grams and packs that do what was asked cost less: " + solved
                        : "Time ended before the proof: nothing costs less than "
                                + Show.money(plan.proof().lowerBound(), currency()) + "; " + solved);
        filled.audit()
                .ifPresent(audit -> page.paragraph(
                        "  ",
                        "  ",
                        "Every number above was worked out again from the files: "
                                + Show.count(audit.checks().size(), "check", "checks") + " passed."));
    }
}
