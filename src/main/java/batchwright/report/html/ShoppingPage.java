package batchwright.report.html;

import batchwright.answer.BoughtTogether;
import batchwright.answer.BuyLine;
import batchwright.answer.PlanAnswer;
import batchwright.food.Food;
import batchwright.plan.Plan;
import batchwright.plan.UseUp;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.report.shopping.BoughtEarly;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The shopping list: shop by shop, section by section, with boxes to tick; what is at home; the total against the budget. */
final class ShoppingPage {
    private final PlanPage page;
    private final List<BuyLine> lines;

    ShoppingPage(PlanPage page) {
        this.page = page;
        this.lines = BuyLine.of(page.plan());
    }

    void write(Html html) {
        page.open(html, "shop", "Shopping list", total() + carriedOver());
        List<BuyLine> bought = lines.stream().filter(l -> l.pack().isPresent()).toList();
        new BasketTable(bought, page.currency(), ShoppingPage::moreAtHome).write(html);
        atHome(html);
        BasketTable.prices(html, bought);
        html.close().line();
    }

    /** One list for all sessions, with those that things are bought for. */
    static void writeForAll(Html html, PlanAnswer answer, Plan plan) {
        Currency currency = answer.kitchen().currency();
        List<BoughtTogether> together = BoughtTogether.of(plan.sessions());
        List<BuyLine> all = together.stream().map(BoughtTogether::line).toList();
        html.open("section", "id", "shop", "class", "page shop", "aria-labelledby", "shop-h");
        html.element("h2", "Shopping list, before day 1", "id", "shop-h");
        html.open("p", "class", "whose").name(PlanPage.forWhom(answer)).close();
        html.element("p", "Total " + Show.money(plan.cost(), currency) + ".", "class", "says")
                .line();
        new BasketTable(all, currency, line -> Optional.of(forSessions(together.get(all.indexOf(line))))).write(html);
        BoughtEarly.says(plan.sessions()).ifPresent(says -> html.element("p", says, "class", "note"));
        BasketTable.prices(html, all);
        html.close().line();
    }

    private static String forSessions(BoughtTogether bought) {
        return (bought.sessions().size() == 1 ? "for session " : "for sessions ")
                + bought.sessions().stream().map(n -> Integer.toString(n)).collect(Collectors.joining(" and "));
    }

    /** When all was bought before the first session. */
    void writeWhatIsAtHome(Html html) {
        page.open(html, "shop", "At home", "Everything was bought before day 1." + carriedOver());
        atHome(html);
        html.close().line();
    }

    private String carriedOver() {
        return page.session() < 2
                ? ""
                : " At home is also what the sessions before leave; of what spoils soon no opened pack is counted on.";
    }

    private static Optional<String> moreAtHome(BuyLine line) {
        return Optional.of(line)
                .filter(l -> l.fromPantryGrams().signum() > 0)
                .map(l -> Show.whole(l.fromPantryGrams()) + " g more is at home");
    }

    private String total() {
        Money cost = page.plan().cost();
        return "Total " + Show.money(cost, page.currency())
                + Show.underBudget(page.answer().budget(), cost, page.currency())
                        .map(under -> ", " + under)
                        .orElse("")
                + ".";
    }

    private void atHome(Html html) {
        List<BuyLine> home =
                lines.stream().filter(l -> l.fromPantryGrams().signum() > 0).toList();
        Set<String> staples = page.plan().batches().stream()
                .flatMap(b -> b.dish().staples().stream())
                .map(s -> s.name())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        html.open("h3").text("At home: look before you go").close();
        html.open("ul", "class", "ticks").line();
        for (BuyLine line : home) {
            BasketTable.tick(html);
            html.open("span", "class", "what")
                    .open("strong")
                    .name(line.food().name())
                    .close();
            html.element("span", amount(line.food(), line.fromPantryGrams()), "class", "pack");
            html.close().close().close().line();
        }
        for (String staple : staples) {
            BasketTable.tick(html);
            html.open("span", "class", "what").open("strong").name(staple).close();
            html.close().close().close().line();
        }
        html.close().line();
        useUp(html);
    }

    private void useUp(Html html) {
        String useUp = UseUp.of(page.plan()).stream()
                .map(u -> u.food().name() + ", " + amount(u.food(), u.grams()) + ", by " + Dates.shortly(u.useBy()))
                .collect(Collectors.joining("; "));
        if (!useUp.isEmpty()) {
            html.element("p", "Use up, besides this plan: " + useUp + ".", "class", "note");
        }
        String past = page.answer().kitchen().pastTheirDate().keySet().stream()
                .map(Food::name)
                .collect(Collectors.joining("; "));
        if (!past.isEmpty()) {
            html.element("p", "Past its date, not used: " + past + ".", "class", "note");
        }
    }

    private String amount(Food food, BigDecimal grams) {
        return Show.whole(grams) + " g"
                + KitchenMeasure.pieces(page.answer().kitchen(), food, grams.multiply(food.edibleShare()))
                        .map(pieces -> " (" + pieces + ")")
                        .orElse("");
    }
}
