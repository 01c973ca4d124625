package batchwright.report.export;

import batchwright.answer.BuyLine;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Pack;
import batchwright.plan.Session;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.print.Dates;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.shopping.BoughtEarly;
import batchwright.report.shopping.TripsText;
import java.math.BigDecimal;
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

    private static final String TITLE = "SHOPPING (made by Batchwright)";
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

    /** Whether a file with this beginning is such a list. */
    public static boolean isIn(String beginning) {
        return beginning.replace("\uFEFF", "").stripLeading().startsWith(TITLE);
    }

    private void write() {
        List<List<Session>> trips = plan.trips();
        page.paragraph(TITLE);
        page.paragraph(plan.forWhom());
        page.paragraph("Total " + Show.money(plan.plan().cost(), plan.currency()) + againstBudget());
        TripsText.of(plan.plan().sessions()).ifPresent(page::paragraph);
        for (List<Session> trip : trips) {
            trip(trip, trips.size() > 1);
        }
    }

    private String againstBudget() {
        return Show.underBudget(plan.whole().budget(), plan.plan().cost(), plan.currency())
                .map(under -> ", " + under)
                .orElse("");
    }

    private void trip(List<Session> sessions, boolean oneOfSeveral) {
        String before = "FOR " + Dates.shortly(plan.shops(sessions.get(0))).toUpperCase(Locale.ROOT);
        page.gap().paragraph(before + (oneOfSeveral ? ": " + Show.money(cost(sessions), plan.currency()) : ""));
        packs(sessions).forEach(this::shop);
        atHome(sessions);
        BoughtEarly.says(sessions).ifPresent(says -> page.gap().paragraph(says));
    }

    private static Money cost(List<Session> sessions) {
        return sessions.stream().map(Session::cost).reduce(Money.ZERO, Money::plus);
    }

    /** By shop, section and food, in the order of the plan; packs for several sessions together. */
    private static Map<String, Map<String, Map<Food, Map<Pack, Integer>>>> packs(List<Session> sessions) {
        Map<String, Map<String, Map<Food, Map<Pack, Integer>>>> packs = new LinkedHashMap<>();
        sessions.forEach(session -> BuyLine.of(session)
                .forEach(line -> line.pack()
                        .ifPresent(pack -> packs.computeIfAbsent(pack.shop(), shop -> new LinkedHashMap<>())
                                .computeIfAbsent(line.food().group(), group -> new LinkedHashMap<>())
                                .computeIfAbsent(line.food(), food -> new LinkedHashMap<>())
                                .merge(pack, line.packs(), Integer::sum))));
        return packs;
    }

    private void shop(String shop, Map<String, Map<Food, Map<Pack, Integer>>> sections) {
        Money cost = sections.values().stream()
                .flatMap(foods -> foods.values().stream())
                .flatMap(packs -> packs.entrySet().stream())
                .map(e -> e.getKey().price().times(e.getValue()))
                .reduce(Money.ZERO, Money::plus);
        page.gap().paragraph("AT " + shop + ": " + Show.money(cost, plan.currency()));
        sections.forEach((group, foods) -> {
            page.gap().paragraph(Show.capital(group.replace('_', ' ')));
            foods.values().forEach(packs -> packs.forEach(this::bought));
        });
    }

    private void bought(Pack pack, int count) {
        page.paragraph(BOX, BELOW_BOX, pack.food().name());
        page.paragraph(
                BELOW_BOX,
                BELOW_BOX,
                PackText.bought(pack, count) + ", "
                        + plan.currency().text(pack.price().times(count)));
    }

    /** What is taken without buying it. What a session leaves for the next is not at home yet. */
    private void atHome(List<Session> sessions) {
        page.gap().paragraph("AT HOME: look before you go");
        Map<Food, BigDecimal> taken = new LinkedHashMap<>();
        Set<String> staples = new LinkedHashSet<>();
        sessions.forEach(session -> {
            BuyLine.of(session).forEach(line -> taken.merge(line.food(), line.fromPantryGrams(), BigDecimal::add));
            session.batches().forEach(batch -> batch.dish().staples().forEach(staple -> staples.add(staple.name())));
        });
        Kitchen before = sessions.get(0).kitchen();
        taken.forEach((food, grams) -> {
            BigDecimal there = grams.min(before.pantryGrams(food));
            if (there.signum() > 0) {
                page.paragraph(BOX, BELOW_BOX, food.name() + ", " + Show.whole(there) + " g");
            }
        });
        staples.forEach(staple -> page.paragraph(BOX, BELOW_BOX, staple));
    }
}
