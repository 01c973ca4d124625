package batchwright.report.plan;

import batchwright.answer.BuyLine;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.report.foods.PackText;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One shopping list for all sessions, shop by shop, with the sessions for which things are bought. */
record BuyOnceText(SessionsAnswer answer, Page page) {
    void write() {
        page.heading("BUY, all of it before day 1: " + Show.money(answer.cost(), currency()));
        Map<String, Map<Pack, Wanted>> byShop = new LinkedHashMap<>();
        for (int s = 0; s < answer.sessions().size(); s++) {
            for (BuyLine line : BuyLine.of(answer.sessions().get(s).plan())) {
                int session = s + 1;
                line.pack()
                        .ifPresent(pack -> byShop.computeIfAbsent(pack.shop(), shop -> new LinkedHashMap<>())
                                .merge(pack, new Wanted(line.packs(), List.of(session)), Wanted::plus));
            }
        }
        byShop.forEach(this::shop);
        BoughtEarly.says(answer.sessions()).ifPresent(says -> page.gap().paragraph("  ", "    ", says));
    }

    private Currency currency() {
        return answer.whole().kitchen().currency();
    }

    private record Wanted(int packs, List<Integer> sessions) {
        Wanted plus(Wanted other) {
            List<Integer> both = new ArrayList<>(sessions);
            both.addAll(other.sessions);
            return new Wanted(packs + other.packs, both);
        }
    }

    private void shop(String shop, Map<Pack, Wanted> wanted) {
        page.gap().line("  " + Show.capital(shop));
        var table = new TextTable("  ").left("food").left("packs").right("cost").left("session");
        wanted.forEach((pack, want) -> table.row(
                pack.food().name(),
                PackText.bought(pack, want.packs()),
                currency().text(pack.price().times(want.packs())),
                want.sessions().stream().map(s -> Integer.toString(s)).collect(Collectors.joining(", "))));
        page.table(table);
    }
}
