package batchwright.report.html;

import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.UseUp;
import batchwright.quantity.Money;
import batchwright.report.BuyLine;
import batchwright.report.Dates;
import batchwright.report.KitchenMeasure;
import batchwright.report.PackText;
import batchwright.report.Show;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The shopping list: shop by shop, section by section, with boxes to tick; what is at home; the total against the budget. */
final class ShoppingPage {
    private static final String INVENTED = "invented";
    private final PlanPage page;
    private final List<BuyLine> lines;

    ShoppingPage(PlanPage page) {
        this.page = page;
        this.lines = BuyLine.of(page.plan());
    }

    void write(Html html) {
        page.open(html, "shop", "Shopping list", total());
        List<BuyLine> bought = lines.stream().filter(l -> l.pack().isPresent()).toList();
        for (String shop : distinct(bought, ShoppingPage::shop)) {
            List<BuyLine> here =
                    bought.stream().filter(l -> shop(l).equals(shop)).toList();
            html.open("h3")
                    .name(Show.capital(shop))
                    .text(": " + Show.money(sum(here), page.currency()))
                    .close();
            html.open("div", "class", "sections").line();
            distinct(here, l -> l.food().group()).forEach(group -> section(html, group, here));
            html.close().line();
        }
        atHome(html);
        prices(html, bought);
        html.close().line();
    }

    private static Set<String> distinct(List<BuyLine> lines, Function<BuyLine, String> by) {
        return lines.stream().map(by).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String shop(BuyLine line) {
        return line.pack().map(Pack::shop).orElse("");
    }

    private static Money sum(List<BuyLine> lines) {
        return lines.stream().map(BuyLine::cost).reduce(Money.ZERO, Money::plus);
    }

    private String total() {
        Money cost = page.plan().cost();
        return "Total " + Show.money(cost, page.currency())
                + page.answer()
                        .budget()
                        .map(budget ->
                                ", " + new Money(budget.minor() - cost.minor()) + " under the budget of " + budget)
                        .orElse("")
                + ".";
    }

    private void section(Html html, String group, List<BuyLine> here) {
        html.open("div", "class", "group")
                .element("h4", Show.capital(group.replace('_', ' ')))
                .line();
        html.open("ul", "class", "ticks").line();
        here.stream().filter(l -> l.food().group().equals(group)).forEach(line -> bought(html, line));
        html.close().close().line();
    }

    private static void bought(Html html, BuyLine line) {
        tick(html);
        html.open("span", "class", "what")
                .open("strong")
                .name(line.food().name())
                .close();
        html.element(
                "span", line.pack().map(p -> PackText.bought(p, line.packs())).orElse(""), "class", "pack");
        if (line.fromPantryGrams().signum() > 0) {
            html.element("span", Show.whole(line.fromPantryGrams()) + " g more is at home", "class", "home");
        }
        html.close()
                .element("span", line.cost().toString(), "class", "money")
                .close()
                .close()
                .line();
    }

    /** Opens an item and its label; a box needs no script, and on paper it is a box too. */
    private static void tick(Html html) {
        html.open("li").open("label").empty("input", "type", "checkbox");
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
            tick(html);
            html.open("span", "class", "what")
                    .open("strong")
                    .name(line.food().name())
                    .close();
            html.element("span", amount(line.food(), line.fromPantryGrams()), "class", "pack");
            html.close().close().close().line();
        }
        for (String staple : staples) {
            tick(html);
            html.open("span", "class", "what").open("strong").name(staple).close();
            html.close().close().close().line();
        }
        html.close().line();
        useUp(html);
    }

    private void useUp(Html html) {
        String useUp = UseUp.of(page.answer().kitchen(), page.answer().days(), page.plan()).stream()
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

    private static void prices(Html html, List<BuyLine> bought) {
        List<Pack> packs = bought.stream().flatMap(l -> l.pack().stream()).toList();
        packs.stream().map(Pack::seen).min(java.time.LocalDate::compareTo).ifPresent(oldest -> {
            boolean invented = packs.stream().anyMatch(p -> p.note().startsWith(INVENTED));
            html.element(
                    "p",
                    "Grams are as bought, with peel, bone or shell. Prices were seen on " + oldest + " or later"
                            + (invented ? "; some or all are invented for the demo." : "."),
                    "class",
                    "note");
        });
    }
}
