package batchwright.report.export;

import batchwright.answer.BuyLine;
import batchwright.food.Pack;
import batchwright.food.PriceTag;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * The shopping list as a table for spreadsheets and scripts: a row for each food and size of pack of each session, one with 0
 * packs for what the pantry covers alone. Decimals have a point; the column {@code cost} adds up to the cost of the plan.
 */
public final class ShoppingCsv {
    private static final BigDecimal GRAMS_PER_KG = BigDecimal.valueOf(1000);
    private static final List<String> COLUMNS = List.of(
            "shop_on",
            "cook_on",
            "shop",
            "section",
            "food",
            "name",
            "pack",
            "packs",
            "units_per_pack",
            "pack_g",
            "price",
            "cost",
            "currency",
            "price_per_kg",
            "from_pantry_g",
            "used_g",
            "left_g");
    /** This many first columns identify such a table, whatever a spreadsheet or a later version adds after them. */
    private static final int TELLING = 8;

    private final WholePlan plan;
    private final Csv csv = new Csv(COLUMNS.toArray(new String[0]));

    private ShoppingCsv(WholePlan plan) {
        this.plan = plan;
    }

    public static String of(WholePlan plan) {
        var shopping = new ShoppingCsv(plan);
        plan.plan()
                .sessions()
                .forEach(session -> BuyLine.of(session)
                        .forEach(line -> line.pack()
                                .ifPresentOrElse(
                                        pack -> shopping.bought(session, line, pack),
                                        () -> shopping.fromPantry(session, line))));
        return shopping.csv.toString();
    }

    /** Whether a file that begins like this is such a table, even if a spreadsheet saved it with other separators. */
    public static boolean isIn(String beginning) {
        String head = beginning.lines().findFirst().orElse("").replaceAll("[\"\uFEFF]", "");
        return Arrays.asList(head.split("[,;\t]", TELLING + 1))
                .subList(0, Math.min(TELLING, head.split("[,;\t]", TELLING + 1).length))
                .equals(COLUMNS.subList(0, TELLING));
    }

    private void bought(Session session, BuyLine line, Pack pack) {
        csv.row(
                plan.shops(session).toString(),
                session.cookingDay().toString(),
                Csv.text(pack.shop()),
                section(line),
                line.food().id(),
                Csv.text(line.food().name()),
                Csv.text(pack.label()),
                Integer.toString(line.packs()),
                Integer.toString(pack.contents().units()),
                grams(pack.grams()),
                plan.currency().text(pack.price()),
                plan.currency().text(line.cost()),
                plan.currency().code(),
                perKg(pack.tag()),
                grams(line.fromPantryGrams()),
                grams(line.usedGrams()),
                grams(line.leftGrams()));
    }

    private void fromPantry(Session session, BuyLine line) {
        csv.row(
                "",
                session.cookingDay().toString(),
                "",
                section(line),
                line.food().id(),
                Csv.text(line.food().name()),
                "",
                "0",
                "",
                "",
                "",
                plan.currency().text(Money.ZERO),
                plan.currency().code(),
                "",
                grams(line.fromPantryGrams()),
                grams(line.usedGrams()),
                grams(line.leftGrams()));
    }

    private static String section(BuyLine line) {
        return Csv.text(line.food().group().replace('_', ' '));
    }

    private static String grams(BigDecimal grams) {
        return Show.plainText(grams, 1);
    }

    /** Of what can be used, drained where it is drained; to the minor unit. */
    private String perKg(PriceTag tag) {
        return plan.currency().text(tag.price().shareOf(GRAMS_PER_KG, tag.grams()));
    }
}
