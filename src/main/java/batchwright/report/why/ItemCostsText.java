package batchwright.report.why;

import batchwright.answer.CostChange;
import batchwright.explain.cost.ItemCost;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What each food that is bought costs, the dearest first, with a bar. */
final class ItemCostsText {
    private static final int MOST_ROWS = 8;
    private static final int BAR = 16;
    private static final BigDecimal PER_KCAL = BigDecimal.valueOf(1000);
    private final List<ItemCost> items;
    private final long all;
    private final Currency currency;
    private final Page page;

    ItemCostsText(List<ItemCost> items, Currency currency, Page page) {
        this.currency = currency;
        this.items = items;
        this.all = items.stream().mapToLong(i -> i.cost().minor()).sum();
        this.page = page;
    }

    void write() {
        page.heading("WHY: cost by food");
        page.gap();
        var table = new TextTable("  ")
                .left("food")
                .right(currency.code())
                .right("%")
                .right("sum %")
                .right("per 1000\nkcal")
                .left("");
        boolean many = items.size() > MOST_ROWS + 1;
        List<ItemCost> shown = many ? items.subList(0, MOST_ROWS) : items;
        long sum = 0;
        for (ItemCost item : shown) {
            sum += item.cost().minor();
            row(table, item.food().name(), List.of(item), sum);
        }
        if (many) {
            List<ItemCost> rest = items.subList(MOST_ROWS, items.size());
            row(table, rest.size() + " more", rest, all);
        }
        page.table(table);
        page.paragraph(
                "  ",
                "  ",
                "Together " + Show.money(new Money(all), currency) + ", " + perThousand(items)
                        + " per 1000 kcal. Energy is that of what is used, without what was at home; packs are paid for whole.");
    }

    private void row(TextTable table, String name, List<ItemCost> some, long sum) {
        long cost = some.stream().mapToLong(i -> i.cost().minor()).sum();
        long dearest = items.get(0).cost().minor();
        int bar = Math.toIntExact(Math.min(BAR, Math.round((double) cost * BAR / dearest)));
        table.row(
                name,
                currency.text(new Money(cost)),
                Show.whole(CostChange.percent(cost, all)),
                Show.whole(CostChange.percent(sum, all)),
                perThousand(some),
                some.size() == 1 ? "#".repeat(bar) : "");
    }

    private String perThousand(List<ItemCost> some) {
        BigDecimal kcal = some.stream().map(ItemCost::kcal).reduce(BigDecimal.ZERO, BigDecimal::add);
        return perThousandKcal(some.stream().mapToLong(i -> i.cost().minor()).sum(), kcal);
    }

    /** A dash for what has no energy to speak of. */
    private String perThousandKcal(long minor, BigDecimal kcal) {
        return kcal.compareTo(BigDecimal.ONE) < 0
                ? "-"
                : currency.text(BigDecimal.valueOf(minor).multiply(PER_KCAL).divide(kcal, 4, RoundingMode.HALF_UP));
    }
}
