package batchwright.report.export;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.quantity.Money;
import batchwright.report.BuyLine;
import batchwright.report.Dates;
import batchwright.report.PackText;
import batchwright.report.Page;
import batchwright.report.SessionsAnswer;
import batchwright.report.Show;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The shopping list as plain text for a phone: short lines, section by section, with a box before each thing. */
public final class ShoppingNote {
    /** Columns that a phone shows in one line of its usual type: common practice. */
    private static final int PHONE = 36;

    private static final String BOX = "[ ] ";
    private static final String BELOW_BOX = "    ";
    private final WholePlan plan;
    private final Page page = new Page(PHONE);

    private ShoppingNote(WholePlan plan) {
        this.plan = plan;
    }

    public static String of(WholePlan plan) {
        var note = new ShoppingNote(plan);
        note.write();
        return note.page.toString();
    }

    private void write() {
        List<List<SessionsAnswer.One>> trips = plan.shopOnce()
                ? List.of(plan.sessions())
                : plan.sessions().stream().map(List::of).toList();
        page.paragraph("SHOPPING");
        page.paragraph(plan.forWhom());
        page.paragraph("Total " + Show.money(plan.cost(), plan.currency()) + againstBudget());
        for (List<SessionsAnswer.One> trip : trips) {
            trip(trip, trips.size() > 1);
        }
    }

    private String againstBudget() {
        return plan.whole()
                .budget()
                .map(budget ->
                        ", " + new Money(budget.minor() - plan.cost().minor()) + " under the budget of " + budget)
                .orElse("");
    }

    private void trip(List<SessionsAnswer.One> sessions, boolean oneOfSeveral) {
        String before = "FOR " + Dates.shortly(plan.shops(sessions.get(0))).toUpperCase(Locale.ROOT);
        page.gap()
                .paragraph(before + (oneOfSeveral ? ": " + Show.money(WholePlan.cost(sessions), plan.currency()) : ""));
        packs(sessions).forEach(this::shop);
        sessions.forEach(session -> atHome(session, sessions.size() > 1));
    }

    /** Shop by shop, in the order of the files; packs for several sessions together. */
    private static Map<String, Map<Pack, Integer>> packs(List<SessionsAnswer.One> sessions) {
        Map<String, Map<Pack, Integer>> packs = new LinkedHashMap<>();
        sessions.forEach(session -> BuyLine.of(session.plan())
                .forEach(line -> line.pack()
                        .ifPresent(pack -> packs.computeIfAbsent(pack.shop(), shop -> new LinkedHashMap<>())
                                .merge(pack, line.packs(), Integer::sum))));
        return packs;
    }

    private void shop(String shop, Map<Pack, Integer> packs) {
        Money cost = packs.entrySet().stream()
                .map(e -> e.getKey().price().times(e.getValue()))
                .reduce(Money.ZERO, Money::plus);
        page.gap().paragraph("AT " + shop + ": " + Show.money(cost, plan.currency()));
        Map<String, List<Pack>> sections = new LinkedHashMap<>();
        packs.keySet()
                .forEach(pack -> sections.computeIfAbsent(pack.food().group(), group -> new ArrayList<>())
                        .add(pack));
        sections.forEach((group, here) -> {
            page.gap().paragraph(Show.capital(group.replace('_', ' ')));
            here.forEach(pack -> bought(pack, packs.getOrDefault(pack, 0)));
        });
    }

    private void bought(Pack pack, int count) {
        page.paragraph(BOX, BELOW_BOX, pack.food().name());
        page.paragraph(
                BELOW_BOX,
                BELOW_BOX,
                PackText.bought(pack, count) + ", " + pack.price().times(count));
    }

    /** What the plan takes without buying it. */
    private void atHome(SessionsAnswer.One session, boolean oneOfSeveral) {
        page.gap()
                .paragraph("AT HOME"
                        + (oneOfSeveral ? ", for " + Dates.shortly(WholePlan.cooks(session)) : "")
                        + ": look before you go");
        for (BuyLine line : BuyLine.of(session.plan())) {
            if (line.fromPantryGrams().signum() > 0) {
                Food food = line.food();
                page.paragraph(BOX, BELOW_BOX, food.name() + ", " + Show.whole(line.fromPantryGrams()) + " g");
            }
        }
        Set<String> staples = new LinkedHashSet<>();
        session.plan().batches().forEach(batch -> batch.dish().staples().forEach(staple -> staples.add(staple.name())));
        staples.forEach(staple -> page.paragraph(BOX, BELOW_BOX, staple));
    }
}
