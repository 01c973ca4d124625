package batchwright.report.foods;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.food.PriceRank;
import batchwright.food.PriceRank.By;
import batchwright.food.UnitPrice;
import batchwright.quantity.Currency;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.stream.Collectors;

/** Foods ranked by what their energy or protein costs. */
public final class CompareText {
    private CompareText() {}

    /**
     * The page.
     *
     * @param currency of all prices
     * @param which foods these are, a sentence; may be empty
     */
    public static String of(PriceRank rank, Currency currency, String which) {
        var page = new Page();
        if (!which.isEmpty()) {
            page.paragraph(which);
        }
        if (rank.prices().isEmpty() && rank.withoutPrice().isEmpty() && !which.isEmpty()) {
            return page.toString();
        }
        page.paragraph(answer(rank, currency));
        if (!rank.prices().isEmpty()) {
            page.gap();
            page.table(table(rank, currency));
        }
        if (!rank.withoutPrice().isEmpty()) {
            page.gap();
            page.paragraph(
                    Show.count(rank.withoutPrice().size(), "food", "foods") + " without a price in foods/shop.csv: "
                            + rank.withoutPrice().stream().map(Food::id).collect(Collectors.joining(", ")) + ".");
        }
        return page.toString();
    }

    private static String answer(PriceRank rank, Currency currency) {
        if (rank.prices().isEmpty()) {
            return "No food to compare has a price.";
        }
        UnitPrice first = rank.prices().get(0);
        String of = rank.by() == By.KCAL ? "1000 kcal" : "30 g protein";
        return Show.count(rank.prices().size(), "food with a price", "foods with a price") + "; cheapest for " + of
                + ": "
                + first.pack().food().name() + ", " + Show.money(rank.by().of(first), currency) + " " + currency
                + ". Each in the pack that is cheapest per edible gram.";
    }

    private static TextTable table(PriceRank rank, Currency currency) {
        var table = new TextTable("")
                .left("food")
                .right(currency + " per\n1000\nkcal")
                .right(currency + " per\n30 g\nprotein")
                .left("pack")
                .left("shop")
                .left("seen");
        for (UnitPrice price : rank.prices()) {
            Pack pack = price.pack();
            table.row(
                    pack.food().id(),
                    Show.money(By.KCAL.of(price), currency),
                    Show.money(By.PROTEIN.of(price), currency),
                    pack.label(),
                    pack.shop(),
                    pack.seen().toString());
        }
        return table;
    }
}
