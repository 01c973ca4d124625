package batchwright.report;

import batchwright.food.Food;
import batchwright.food.Pack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** One shopping list for all sessions, shop by shop, with the sessions for which things are bought. */
record BuyOnceText(SessionsAnswer answer, Page page) {
    void write() {
        String currency = answer.whole().kitchen().currency();
        page.heading("BUY, all of it before day 1: " + Show.money(answer.cost(), currency));
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
        later();
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
                pack.price().times(want.packs()).toString(),
                want.sessions().stream().map(s -> Integer.toString(s)).collect(Collectors.joining(", "))));
        page.table(table);
    }

    private void later() {
        Set<Food> perishable = new LinkedHashSet<>();
        answer.sessions().stream()
                .skip(1)
                .forEach(session -> BuyLine.of(session.plan()).stream()
                        .filter(line -> line.pack().isPresent() && line.food().perishable())
                        .forEach(line -> perishable.add(line.food())));
        if (!perishable.isEmpty()) {
            page.gap();
            page.paragraph(
                    "  ",
                    "    ",
                    "Bought on day 1 for a later session, although it does not keep long once opened or out of the cold: "
                            + perishable.stream().map(Food::name).collect(Collectors.joining(", "))
                            + ". Freeze raw meat and fish on day 1; of all else the date on the pack must reach the days it is"
                            + " for. Otherwise shop before each session (--shop each).");
        }
    }
}
