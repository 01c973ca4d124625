package batchwright.report.html;

import batchwright.answer.BuyLine;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.html.part.Tick;
import batchwright.report.print.Show;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is bought in one shop, section by section. */
public record ShopList(String name, String cost, List<Section> sections) {
    private static final String INVENTED = "invented";

    public record Section(String name, List<Tick> ticks) {}

    /**
     * @param lines with packs only
     * @param note what is said below a food; may be empty
     */
    static List<ShopList> of(List<BuyLine> lines, Currency currency, Function<BuyLine, String> note) {
        return distinct(lines, ShopList::shop).stream()
                .map(shop -> {
                    List<BuyLine> here =
                            lines.stream().filter(l -> shop(l).equals(shop)).toList();
                    return new ShopList(
                            Show.capital(shop), Show.money(sum(here), currency), sections(here, currency, note));
                })
                .toList();
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

    private static List<Section> sections(List<BuyLine> here, Currency currency, Function<BuyLine, String> note) {
        return distinct(here, l -> l.food().group()).stream()
                .map(group -> new Section(
                        Show.capital(group.replace('_', ' ')),
                        here.stream()
                                .filter(l -> l.food().group().equals(group))
                                .map(l -> bought(l, currency, note.apply(l)))
                                .toList()))
                .toList();
    }

    private static Tick bought(BuyLine line, Currency currency, String note) {
        String packs = line.pack().map(p -> PackText.bought(p, line.packs())).orElse("");
        return new Tick(line.food().name(), packs, note, currency.text(line.cost()));
    }

    /** How old prices are; empty when nothing is bought. */
    static Optional<String> prices(List<BuyLine> bought) {
        List<Pack> packs = bought.stream().flatMap(l -> l.pack().stream()).toList();
        boolean invented = packs.stream().anyMatch(p -> p.note().startsWith(INVENTED));
        return packs.stream()
                .map(Pack::seen)
                .min(LocalDate::compareTo)
                .map(oldest -> "Grams are as bought, with peel, bone or shell. Prices were seen on " + oldest
                        + " or later" + (invented ? "; some or all are invented for the demo." : "."));
    }
}
