package batchwright.report.shopping;

import batchwright.answer.BoughtTogether;
import batchwright.food.Pack;
import batchwright.plan.Plan;
import batchwright.quantity.Currency;
import batchwright.report.foods.PackText;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** One shopping list for all sessions, shop by shop, with the sessions for which things are bought. */
public record OneTripText(Plan plan, Currency currency, Page page) {
    public void write() {
        page.heading("BUY, all of it before day 1: " + Show.money(plan.cost(), currency));
        BoughtTogether.of(plan.sessions()).stream()
                .collect(Collectors.groupingBy(OneTripText::shop, LinkedHashMap::new, Collectors.toList()))
                .forEach(this::shop);
        BoughtEarly.says(plan.sessions()).ifPresent(says -> page.gap().paragraph("  ", "    ", says));
    }

    private static String shop(BoughtTogether bought) {
        return pack(bought).shop();
    }

    private static Pack pack(BoughtTogether bought) {
        return bought.line().pack().orElseThrow();
    }

    private void shop(String shop, List<BoughtTogether> here) {
        page.gap().line("  " + Show.capital(shop));
        var table = new TextTable("  ").left("food").left("packs").right("cost").left("session");
        here.forEach(bought -> table.row(
                bought.line().food().name(),
                PackText.bought(pack(bought), bought.line().packs()),
                currency.text(bought.line().cost()),
                bought.sessions().stream().map(s -> Integer.toString(s)).collect(Collectors.joining(", "))));
        page.table(table);
    }
}
