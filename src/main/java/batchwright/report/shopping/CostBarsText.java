package batchwright.report.shopping;

import batchwright.answer.BuyLine;
import batchwright.food.Food;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What drives the cost: the dearest foods with a bar each, and the rest. */
record CostBarsText(List<BuyLine> bought, Currency currency, Page page) {
    private static final int SHOWN = 5;
    /** Of the longest bar. */
    private static final int COLUMNS = 24;

    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    /** Nothing where everything can be seen at a glance anyway. */
    void write() {
        Map<Food, Money> costs = new LinkedHashMap<>();
        bought.forEach(line -> costs.merge(line.food(), line.cost(), Money::plus));
        Money all = costs.values().stream().reduce(Money.ZERO, Money::plus);
        if (costs.size() <= SHOWN || all.minor() == 0) {
            return;
        }
        List<Map.Entry<Food, Money>> dearest = costs.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .limit(SHOWN)
                .toList();
        Money most = dearest.get(0).getValue();
        var table = new TextTable("  ")
                .left("what costs most")
                .right("cost")
                .right("% of all")
                .right("% so far")
                .left("");
        Money together = Money.ZERO;
        for (Map.Entry<Food, Money> one : dearest) {
            together = together.plus(one.getValue());
            table.row(
                    one.getKey().name(),
                    currency.text(one.getValue()),
                    perCent(one.getValue(), all),
                    perCent(together, all),
                    "#".repeat(bar(one.getValue(), most)));
        }
        Money rest = all.minus(together);
        table.row(
                Show.count(costs.size() - SHOWN, "other food", "other foods"),
                currency.text(rest),
                perCent(rest, all),
                perCent(all, all),
                "");
        page.gap().table(table);
    }

    private static int bar(Money cost, Money most) {
        return BigDecimal.valueOf(cost.minor() * COLUMNS)
                .divide(BigDecimal.valueOf(most.minor()), 0, RoundingMode.HALF_UP)
                .max(BigDecimal.ONE)
                .intValue();
    }

    private static String perCent(Money some, Money all) {
        return Show.whole(some.shareOf(PER_CENT, BigDecimal.valueOf(all.minor())));
    }
}
