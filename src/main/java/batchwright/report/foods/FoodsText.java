package batchwright.report.foods;

import batchwright.answer.DishAllergens;
import batchwright.food.CookedYield;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.food.TakenOff;
import batchwright.food.UnitPrice;
import batchwright.food.origin.Origin;
import batchwright.food.origin.Origins;
import batchwright.quantity.Money;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Foods for people: a table that compares them, or one in full. */
public final class FoodsText {
    static final int KCAL_COMPARED = 1000;
    static final int PROTEIN_COMPARED_G = 30;
    private static final String STALE = "stale";
    private final Kitchen kitchen;
    private final Page page;

    private FoodsText(Kitchen kitchen, Page page) {
        this.kitchen = kitchen;
        this.page = page;
    }

    /** @param answer the first sentence */
    public static String table(Kitchen kitchen, List<Food> foods, String answer) {
        return new FoodsText(kitchen, new Page()).byGroup(foods, answer).toString();
    }

    /** Foods best first, in no groups, for what was searched for. */
    static void bestFirst(Page page, Kitchen kitchen, List<Food> foods) {
        if (foods.isEmpty()) {
            return;
        }
        var text = new FoodsText(kitchen, page);
        TextTable table = text.columns();
        foods.forEach(food -> text.row(table, "", food));
        page.table(table);
        text.tellWhatIsStale(foods);
    }

    public static String one(Kitchen kitchen, Food food) {
        return new FoodsText(kitchen, new Page()).full(food);
    }

    private Page byGroup(List<Food> foods, String answer) {
        page.paragraph(answer);
        if (foods.isEmpty()) {
            return page;
        }
        page.gap();
        TextTable table = columns();
        Set<String> groups = foods.stream().map(Food::group).collect(Collectors.toCollection(LinkedHashSet::new));
        for (String group : groups) {
            table.row(group.replace('_', ' ') + ":", "", "", "", "", "");
            foods.stream().filter(f -> f.group().equals(group)).forEach(f -> row(table, " ", f));
        }
        page.table(table);
        tellWhatIsStale(foods);
        return page;
    }

    private TextTable columns() {
        return new TextTable("")
                .left("food")
                .right("kcal\n/100 g")
                .right("protein\ng/100 g")
                .right(kitchen.currency() + " per\n1000 kcal")
                .right(kitchen.currency() + " per 30\ng protein")
                .left("cheapest\nat");
    }

    private void tellWhatIsStale(List<Food> foods) {
        if (foods.stream().flatMap(f -> UnitPrice.of(kitchen, f).stream()).anyMatch(p -> isStale(p.pack()))) {
            page.gap()
                    .paragraph(STALE + ": the price was seen more than " + Pack.STALE_AFTER_DAYS + " days before "
                            + kitchen.cookingDay() + ".");
        }
    }

    private boolean isStale(Pack pack) {
        return pack.isStaleOn(kitchen.cookingDay());
    }

    private String marked(String text, Pack pack) {
        return isStale(pack) ? text + " (" + STALE + ")" : text;
    }

    private void row(TextTable table, String indent, Food food) {
        Optional<UnitPrice> price = UnitPrice.of(kitchen, food);
        table.row(
                indent + food.id(),
                Show.amount(food.per100g(), Nutrient.ENERGY),
                Show.oneDecimal(food.per100g().get(Nutrient.PROTEIN)),
                money(price.flatMap(p -> p.of(Nutrient.ENERGY, KCAL_COMPARED))),
                money(price.flatMap(p -> p.of(Nutrient.PROTEIN, PROTEIN_COMPARED_G))),
                price.map(p -> marked(p.pack().shop(), p.pack())).orElse("no price"));
    }

    private String money(Optional<Money> money) {
        return Show.money(money, kitchen.currency());
    }

    private String full(Food food) {
        page.paragraph(Show.capital(food.name()) + " (" + food.id() + "): "
                + Show.amount(food.per100g(), Nutrient.ENERGY) + " kcal and "
                + Show.oneDecimal(food.per100g().get(Nutrient.PROTEIN)) + " g protein in 100 g.");
        page.gap();
        page.paragraph(
                "", "  ", "Group: " + food.group().replace('_', ' ') + (food.perishable() ? "; perishable" : "") + ".");
        page.paragraph("", "  ", "Source: " + source(food) + ".");
        page.paragraph(
                "",
                "  ",
                "Thrown away: " + Show.plainText(food.refusePercent(), 1) + " % of the weight as bought"
                        + (food.takenOff().isEmpty() ? "" : ": " + takenOff(food)) + ".");
        page.paragraph("", "  ", "Allergens: " + DishAllergens.named(food.allergens()) + ". Labels decide: read them.");
        page.paragraph("", "  ", "For diets: " + origins(food.origins()) + ".");
        page.paragraph("", "  ", "At home: " + Show.plainText(kitchen.pantryGrams(food), 1) + " g" + dates(food) + ".");
        nutrients(food);
        packs(food);
        measures(food);
        yields(food);
        return page.toString();
    }

    private static String takenOff(Food food) {
        return food.takenOff().stream().map(TakenOff::id).collect(Collectors.joining(", "));
    }

    private static String origins(Origins origins) {
        if (!origins.known()) {
            return "nothing is said of what it is made of, so that a diet asks";
        }
        String certain = labels(origins.certain());
        String doubtful = labels(origins.doubtful());
        return (certain.isEmpty() ? "no animal, alcohol or gluten for certain" : certain)
                + (doubtful.isEmpty() ? "" : "; may be in it, by its label: " + doubtful);
    }

    private static String labels(Set<Origin> origins) {
        return origins.stream().map(Origin::label).collect(Collectors.joining(", "));
    }

    /** Of lots that have a use-by date. */
    private String dates(Food food) {
        return kitchen.lotsOf(food).stream()
                .flatMap(lot -> lot.useBy().stream()
                        .map(day -> "; " + Show.plainText(lot.grams(), 1) + " g "
                                + (lot.keepsUntil(kitchen.cookingDay())
                                        ? "to be used by " + day
                                        : "past its date, " + day + ", not counted")))
                .collect(Collectors.joining());
    }

    private static String source(Food food) {
        return food.ndb().map(ndb -> "USDA SR28 no. " + ndb + ", ").orElse("") + food.description();
    }

    private void nutrients(Food food) {
        page.heading("In 100 g of the edible part");
        var table = new TextTable("  ").left("").right("amount").left("");
        for (Nutrient nutrient : Nutrient.ofFoods()) {
            boolean known = food.per100g().isKnown(nutrient);
            String least = food.per100g().isComplete(nutrient) ? "" : "at least ";
            table.row(
                    nutrient.label(),
                    known ? least + Show.plainText(food.per100g().get(nutrient), 2) : "not known",
                    known ? nutrient.unit() : "");
        }
        page.table(table);
    }

    private void packs(Food food) {
        page.heading("Packs");
        if (kitchen.packsOf(food).isEmpty()) {
            page.line("  No price in foods/shop.csv.");
            return;
        }
        var table = new TextTable("  ")
                .left("shop")
                .left("pack")
                .right("g")
                .right(kitchen.currency().code())
                .left("seen")
                .left("note");
        for (Pack pack : kitchen.packsOf(food)) {
            table.row(
                    pack.shop(),
                    PackText.label(pack),
                    Show.plainText(pack.tag().grams(), 1),
                    kitchen.currency().text(pack.tag().price()),
                    marked(pack.seen().toString(), pack),
                    pack.note());
        }
        page.table(table);
        UnitPrice.of(kitchen, food)
                .ifPresent(p -> page.paragraph(
                        "  ",
                        "    ",
                        "Cheapest: " + p.pack().label() + ", " + p.pack().shop() + "; "
                                + money(p.of(Nutrient.ENERGY, KCAL_COMPARED)) + " per 1000 kcal, "
                                + money(p.of(Nutrient.PROTEIN, PROTEIN_COMPARED_G)) + " per 30 g protein."));
    }

    private void measures(Food food) {
        if (kitchen.measuresOf(food).isEmpty()) {
            return;
        }
        page.heading("Measures");
        var table = new TextTable("  ")
                .left("measure")
                .right("g")
                .left("as a snack")
                .left("source");
        for (Measure measure : kitchen.measuresOf(food)) {
            table.row(
                    measure.name(),
                    Show.plainText(measure.grams(), 2),
                    measure.snackMost() > 0 ? "up to " + measure.snackMost() + " a day" : "",
                    measure.source());
        }
        page.table(table);
    }

    private void yields(Food food) {
        List<CookedYield> yields = kitchen.yields().getOrDefault(food, List.of());
        if (yields.isEmpty()) {
            return;
        }
        page.heading("Cooked weight / raw weight");
        var table =
                new TextTable("  ").left("cooked").right("factor").left("flag").left("source");
        yields.forEach(y -> table.row(y.method(), Show.plainText(y.factor(), 2), y.flag(), y.source()));
        page.table(table);
    }
}
