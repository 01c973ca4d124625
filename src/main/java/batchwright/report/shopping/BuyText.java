package batchwright.report.shopping;

import batchwright.answer.BuyLine;
import batchwright.answer.Leftover;
import batchwright.answer.PlanAnswer;
import batchwright.food.Pack;
import batchwright.food.Shops;
import batchwright.plan.Batch;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.print.Commands;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The shopping list: shop by shop, section by section, in whole packs. */
public final class BuyText {
    private static final String INVENTED = "invented";
    private final PlanAnswer answer;
    private final Session session;
    private final Commands commands;
    private final Page page;
    private final List<BuyLine> bought;

    /** @param answer with a plan of one cooking session */
    public BuyText(PlanAnswer answer, Commands commands, Page page) {
        this.commands = commands;
        this.answer = answer;
        this.session = answer.plan().orElseThrow().first();
        this.page = page;
        this.bought =
                BuyLine.of(session).stream().filter(l -> l.pack().isPresent()).toList();
    }

    public void write() {
        page.heading("BUY: " + things(bought) + ", " + Show.money(session.cost(), currency()));
        for (String shop : shops()) {
            List<BuyLine> here =
                    bought.stream().filter(l -> shop(l).equals(shop)).toList();
            page.gap();
            page.line("  " + Show.capital(shop) + ": " + Show.money(sum(here), currency()));
            page.table(table(here));
        }
        new PantryText(answer, commands, page).write();
        total();
        new CostBarsText(bought, currency(), page).write();
        page.gap();
        prices();
        oddPriceDates();
    }

    /** 36 packs and 1 food loose: loose goods are one bag each, however many steps on the scale. */
    public static String things(Session session) {
        return things(
                BuyLine.of(session).stream().filter(l -> l.pack().isPresent()).toList());
    }

    private static String things(List<BuyLine> bought) {
        int packs = bought.stream()
                .filter(l -> !isLoose(l))
                .mapToInt(BuyLine::packs)
                .sum();
        int loose = (int) bought.stream().filter(BuyText::isLoose).count();
        String says = Show.count(packs, "pack", "packs");
        return loose == 0 ? says : says + " and " + Show.count(loose, "food", "foods") + " loose";
    }

    private static boolean isLoose(BuyLine line) {
        return line.pack().filter(Pack::isLoose).isPresent();
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }

    private static String shop(BuyLine line) {
        return line.pack().map(Pack::shop).orElse("");
    }

    private Set<String> shops() {
        return bought.stream().map(BuyText::shop).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Money sum(List<BuyLine> lines) {
        return lines.stream().map(BuyLine::cost).reduce(Money.ZERO, Money::plus);
    }

    private TextTable table(List<BuyLine> lines) {
        var table = new TextTable("  ")
                .left("food")
                .left("packs")
                .right("cost")
                .right("home g")
                .right("used g")
                .right("left g");
        for (String group : groups(lines)) {
            table.row(group.replace('_', ' ') + ":", "", "", "", "", "");
            lines.stream().filter(l -> l.food().group().equals(group)).forEach(l -> row(table, l));
        }
        return table;
    }

    private static Set<String> groups(List<BuyLine> lines) {
        return lines.stream().map(l -> l.food().group()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void row(TextTable table, BuyLine line) {
        table.row(
                line.food().name(),
                line.pack().map(p -> PackText.bought(p, line.packs())).orElse(""),
                currency().text(line.cost()),
                line.fromPantryGrams().signum() == 0 ? "" : Show.whole(line.fromPantryGrams()),
                Show.whole(line.usedGrams()),
                Show.whole(line.leftGrams()));
    }

    private void total() {
        page.gap();
        Money cost = session.cost();
        String against = answer.budget()
                .map(budget -> ", "
                        + (cost.compareTo(budget) > 0
                                ? Show.money(cost.minus(budget), currency()) + " over"
                                : Show.money(budget.minus(cost), currency()) + " under")
                        + " the budget of " + currency().text(budget))
                .orElse("");
        page.paragraph("  ", "    ", "Total " + Show.money(cost, currency()) + against + "; " + each(cost) + ".");
        TripsText.of(List.of(session)).ifPresent(says -> page.paragraph("  ", "    ", says));
        page.paragraph(
                "  ",
                "    ",
                "Grams are as bought, with peel, bone or shell, but drained where it is said. left: what remains of packs"
                        + " and pantry taken.");
        reserve();
        leftovers();
    }

    private void reserve() {
        Shops shops = answer.kitchen().shops();
        if (shops.keepsReserve()) {
            page.paragraph(
                    "  ",
                    "    ",
                    "Room to spare: of what is weighed into dishes at least "
                            + Show.plainText(shops.reserve().movePointRight(2), 1)
                            + " % more is at hand than is used. --why says what that costs.");
        }
    }

    /** Stock keeps its worth for the next plan, waste has none. */
    private void leftovers() {
        List<Leftover> left = Leftover.of(session);
        leftovers(
                "Left as stock, which keeps for the next plan",
                left.stream().filter(Leftover::lasts).toList());
        leftovers(
                "Left and spoiling within about two weeks, waste unless it is eaten",
                left.stream().filter(l -> !l.lasts()).toList());
    }

    private void leftovers(String what, List<Leftover> left) {
        if (!left.isEmpty()) {
            String named = left.stream()
                    .map(l -> l.food().name() + " " + Show.whole(l.grams()) + " g")
                    .collect(Collectors.joining("; "));
            page.paragraph(
                    "  ", "    ", what + ", worth " + Show.money(Leftover.sum(left), currency()) + ": " + named + ".");
        }
    }

    /** A day of one eater, or a container when nobody in particular eats them. */
    private String each(Money cost) {
        int eaters = session.eaters().size();
        long howMany = eaters == 0
                ? session.batches().stream().mapToInt(Batch::containers).sum()
                : (long) answer.days() * eaters;
        BigDecimal one = cost.shareOf(BigDecimal.ONE, BigDecimal.valueOf(howMany));
        String what = eaters == 0 ? " a container" : eaters == 1 ? " a day" : " a day and eater";
        return currency().text(one) + " " + currency() + what;
    }

    private void prices() {
        long invented = bought.stream()
                .flatMap(l -> l.pack().stream())
                .filter(p -> p.note().startsWith(INVENTED))
                .count();
        Optional<LocalDate> oldest =
                bought.stream().flatMap(l -> l.pack().stream()).map(Pack::seen).min(LocalDate::compareTo);
        oldest.ifPresent(date -> page.paragraph(
                "  ",
                "    ",
                "Prices from " + date + " or later"
                        + (invented == 0
                                ? "."
                                : "; " + (invented == bought.size() ? "all" : Long.toString(invented))
                                        + " of them are invented for the demo: put yours into foods/shop.csv.")));
    }

    private void oddPriceDates() {
        LocalDate day = answer.kitchen().cookingDay();
        pricesSeen(
                "Stale prices, seen more than " + Pack.STALE_AFTER_DAYS + " days before " + day + ": ",
                pack -> pack.isStaleOn(day));
        pricesSeen(
                "Prices seen after the cooking day, " + day + ": ",
                pack -> pack.seen().isAfter(day));
    }

    private void pricesSeen(String when, Predicate<Pack> which) {
        String named = bought.stream()
                .flatMap(l -> l.pack().stream())
                .filter(which)
                .map(p -> p.food().name() + " " + p.seen())
                .distinct()
                .collect(Collectors.joining("; "));
        if (!named.isEmpty()) {
            page.paragraph("  ", "    ", when + named + ".");
        }
    }
}
