package batchwright.report.html;

import batchwright.answer.BoughtTogether;
import batchwright.answer.BuyLine;
import batchwright.answer.PlanAnswer;
import batchwright.food.Food;
import batchwright.food.Staple;
import batchwright.plan.Plan;
import batchwright.plan.UseUp;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.KitchenMeasure;
import batchwright.report.html.part.PageHead;
import batchwright.report.html.part.Tick;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import batchwright.report.shopping.BoughtEarly;
import batchwright.report.shopping.TripsText;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The shopping list: shop by shop, section by section, with boxes to tick; what is at home; the total against the budget. */
public record ShoppingPage(PageHead head, List<ShopList> shops, Optional<List<Tick>> atHome, List<String> notes) {
    private static final String AT_HOME =
            " At home is also what the sessions before leave; of what spoils soon no opened pack is counted on.";

    static ShoppingPage of(PlanPage page) {
        List<BuyLine> lines = BuyLine.of(page.plan());
        List<BuyLine> bought = lines.stream().filter(l -> l.pack().isPresent()).toList();
        return new ShoppingPage(
                page.head("shop", "Shopping list", total(page) + carriedOver(page)),
                ShopList.of(bought, page.currency(), ShoppingPage::moreAtHome),
                Optional.of(atHome(page, lines)),
                notes(page, ShopList.prices(bought)));
    }

    /** When all was bought before the first session. */
    static ShoppingPage whatIsAtHome(PlanPage page) {
        return new ShoppingPage(
                page.head("shop", "At home", "Everything was bought before day 1." + carriedOver(page)),
                List.of(),
                Optional.of(atHome(page, BuyLine.of(page.plan()))),
                notes(page, Optional.empty()));
    }

    /** One list for all sessions, with those that things are bought for. */
    static ShoppingPage forAll(PlanAnswer answer, Plan plan) {
        Currency currency = answer.kitchen().currency();
        Map<BuyLine, List<Integer>> sessions = new LinkedHashMap<>();
        BoughtTogether.of(plan.sessions()).forEach(bought -> sessions.put(bought.line(), bought.sessions()));
        List<BuyLine> all = List.copyOf(sessions.keySet());
        return new ShoppingPage(
                new PageHead(
                        "shop",
                        "shop",
                        "Shopping list, before day 1",
                        PlanPage.forWhom(answer),
                        "",
                        "Total " + Show.money(plan.cost(), currency) + "."),
                ShopList.of(all, currency, line -> forSessions(sessions.getOrDefault(line, List.of()))),
                Optional.empty(),
                Stream.of(BoughtEarly.says(plan.sessions()), ShopList.prices(all))
                        .flatMap(Optional::stream)
                        .toList());
    }

    private static String forSessions(List<Integer> numbers) {
        return (numbers.size() == 1 ? "for session " : "for sessions ")
                + numbers.stream().map(n -> Integer.toString(n)).collect(Collectors.joining(" and "));
    }

    private static String carriedOver(PlanPage page) {
        return page.session() < 2 ? "" : AT_HOME;
    }

    private static String moreAtHome(BuyLine line) {
        return line.fromPantryGrams().signum() > 0 ? Show.whole(line.fromPantryGrams()) + " g more is at home" : "";
    }

    private static String total(PlanPage page) {
        Money cost = page.plan().cost();
        return "Total " + Show.money(cost, page.currency())
                + Show.underBudget(page.answer().budget(), cost, page.currency())
                        .map(under -> ", " + under)
                        .orElse("")
                + "."
                + TripsText.of(List.of(page.plan())).map(says -> " " + says).orElse("");
    }

    private static List<Tick> atHome(PlanPage page, List<BuyLine> lines) {
        Stream<Tick> foods = lines.stream()
                .filter(l -> l.fromPantryGrams().signum() > 0)
                .map(l -> new Tick(l.food().name(), amount(page, l.food(), l.fromPantryGrams()), "", ""));
        Stream<Tick> staples = page.plan().batches().stream()
                .flatMap(b -> b.dish().staples().stream())
                .map(Staple::name)
                .distinct()
                .map(name -> new Tick(name, "", "", ""));
        return Stream.concat(foods, staples).toList();
    }

    private static List<String> notes(PlanPage page, Optional<String> prices) {
        return Stream.of(useUp(page), pastTheirDate(page), prices)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<String> useUp(PlanPage page) {
        String foods = UseUp.of(page.plan()).stream()
                .map(u ->
                        u.food().name() + ", " + amount(page, u.food(), u.grams()) + ", by " + Dates.shortly(u.useBy()))
                .collect(Collectors.joining("; "));
        return foods.isEmpty() ? Optional.empty() : Optional.of("Use up, besides this plan: " + foods + ".");
    }

    private static Optional<String> pastTheirDate(PlanPage page) {
        String foods = page.answer().kitchen().pastTheirDate().keySet().stream()
                .map(Food::name)
                .collect(Collectors.joining("; "));
        return foods.isEmpty() ? Optional.empty() : Optional.of("Past its date, not used: " + foods + ".");
    }

    private static String amount(PlanPage page, Food food, BigDecimal grams) {
        return Show.whole(grams) + " g"
                + KitchenMeasure.pieces(page.answer().kitchen(), food, grams.multiply(food.edibleShare()))
                        .map(pieces -> " (" + pieces + ")")
                        .orElse("");
    }
}
