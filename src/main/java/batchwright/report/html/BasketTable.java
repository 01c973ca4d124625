package batchwright.report.html;

import batchwright.answer.BuyLine;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is bought: shop by shop, section by section, with boxes to tick. */
final class BasketTable {
    private static final String INVENTED = "invented";

    private final List<BuyLine> lines;
    private final Currency currency;
    private final Function<BuyLine, Optional<String>> note;

    /**
     * @param lines with packs only
     * @param note what is said below a food
     */
    BasketTable(List<BuyLine> lines, Currency currency, Function<BuyLine, Optional<String>> note) {
        this.lines = lines;
        this.currency = currency;
        this.note = note;
    }

    void write(Html html) {
        for (String shop : distinct(lines, BasketTable::shop)) {
            List<BuyLine> here =
                    lines.stream().filter(l -> shop(l).equals(shop)).toList();
            html.open("h3")
                    .name(Show.capital(shop))
                    .text(": " + Show.money(sum(here), currency))
                    .close();
            html.open("div", "class", "sections").line();
            distinct(here, l -> l.food().group()).forEach(group -> section(html, group, here));
            html.close().line();
        }
    }

    private static Set<String> distinct(List<BuyLine> lines, Function<BuyLine, String> by) {
        return lines.stream().map(by).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static String shop(BuyLine line) {
        return line.pack().map(Pack::shop).orElse("");
    }

    static Money sum(List<BuyLine> lines) {
        return lines.stream().map(BuyLine::cost).reduce(Money.ZERO, Money::plus);
    }

    private void section(Html html, String group, List<BuyLine> here) {
        html.open("div", "class", "group")
                .element("h4", Show.capital(group.replace('_', ' ')))
                .line();
        html.open("ul", "class", "ticks").line();
        here.stream().filter(l -> l.food().group().equals(group)).forEach(line -> bought(html, line));
        html.close().close().line();
    }

    private void bought(Html html, BuyLine line) {
        tick(html);
        html.open("span", "class", "what")
                .open("strong")
                .name(line.food().name())
                .close();
        html.element(
                "span", line.pack().map(p -> PackText.bought(p, line.packs())).orElse(""), "class", "pack");
        note.apply(line).ifPresent(says -> html.element("span", says, "class", "home"));
        html.close()
                .element("span", currency.text(line.cost()), "class", "money")
                .close()
                .close()
                .line();
    }

    /** Opens an item and its label; a box needs no script, and on paper it is a box too. */
    static void tick(Html html) {
        html.open("li").open("label").empty("input", "type", "checkbox");
    }

    /** How old prices are. */
    static void prices(Html html, List<BuyLine> bought) {
        List<Pack> packs = bought.stream().flatMap(l -> l.pack().stream()).toList();
        packs.stream().map(Pack::seen).min(LocalDate::compareTo).ifPresent(oldest -> {
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
