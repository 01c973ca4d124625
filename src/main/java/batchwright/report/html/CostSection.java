package batchwright.report.html;

import batchwright.answer.BuyLine;
import batchwright.food.Food;
import batchwright.plan.Purchase;
import batchwright.quantity.Money;
import batchwright.report.html.BarChart.Bar;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What drives the cost, and what of it is left over. */
final class CostSection {
    private static final int MOST_BARS = 8;
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    private record Spent(String name, Money money, String look) {}

    private final PlanPage page;

    CostSection(PlanPage page) {
        this.page = page;
    }

    void write(Html html) {
        html.open("section", "class", "block").element("h3", "Cost").line();
        html.open("div", "class", "pair").line();
        List<Spent> spent = spent();
        if (!spent.isEmpty()) {
            drivers(html, spent);
        }
        leftovers(html);
        html.close().close().line();
    }

    /** Dearest first; beyond the eighth all in one. */
    private List<Spent> spent() {
        List<Spent> all = page.plan().shopping().stream()
                .filter(p -> p.cost().minor() > 0)
                .sorted(Comparator.comparing(Purchase::cost)
                        .reversed()
                        .thenComparing(p -> p.food().name()))
                .map(p -> new Spent(p.food().name(), p.cost(), "bar"))
                .toList();
        if (all.size() <= MOST_BARS + 1) {
            return all;
        }
        List<Spent> shown = new ArrayList<>(all.subList(0, MOST_BARS));
        List<Spent> rest = all.subList(MOST_BARS, all.size());
        shown.add(new Spent(
                "the other " + rest.size() + " foods",
                rest.stream().map(Spent::money).reduce(Money.ZERO, Money::plus),
                "rest"));
        return shown;
    }

    private void drivers(Html html, List<Spent> spent) {
        Money cost = page.plan().cost();
        Spent first = spent.get(0);
        String says = "The dearest is " + first.name + ": " + Show.money(first.money, page.currency()) + ", "
                + share(first.money, cost) + " % of " + Show.money(cost, page.currency()) + ".";
        Figure.open(html, "cost", "What drives it", says);
        BarChart.draw(
                html,
                spent.stream()
                        .map(s ->
                                new Bar(s.name, s.money.minor(), page.currency().text(s.money), s.look))
                        .toList(),
                says);
        var table = new Table("What drives the cost")
                .words("food")
                .numbers(page.currency().code())
                .numbers("share %")
                .numbers("running share %");
        Money running = Money.ZERO;
        for (Spent s : spent) {
            running = running.plus(s.money);
            table.row(s.name, page.currency().text(s.money), share(s.money, cost), share(running, cost));
        }
        table.rowLike("total", "total", page.currency().text(cost), "100", "");
        Figure.table(html, table);
        html.close().line();
    }

    private static String share(Money part, Money whole) {
        return BigDecimal.valueOf(part.minor())
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(Math.max(1, whole.minor())), 0, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private record Left(Food food, BigDecimal grams, Money worth) {}

    private void leftovers(Html html) {
        List<Left> left = BuyLine.of(page.plan()).stream()
                .filter(line -> line.pack().isPresent())
                .filter(line -> line.leftGrams().compareTo(BigDecimal.ONE) >= 0)
                .map(line -> new Left(line.food(), line.leftGrams(), worth(line)))
                .sorted(Comparator.comparing((Left l) -> !l.food.perishable())
                        .thenComparing(Left::worth, Comparator.reverseOrder()))
                .toList();
        if (left.isEmpty()) {
            html.element("p", "Nothing of the packs is left over.");
            return;
        }
        Money sum = left.stream().map(Left::worth).reduce(Money.ZERO, Money::plus);
        long spoils = left.stream().filter(l -> l.food.perishable()).count();
        html.open("div")
                .element("h4", "What is left over")
                .element(
                        "p",
                        "Left over is " + Show.money(sum, page.currency()) + " worth of food"
                                + (spoils == 0
                                        ? ", none of which spoils soon."
                                        : "; what spoils first stands on top."));
        var table = new Table("When the plan is eaten")
                .words("food")
                .numbers("left g")
                .numbers("worth " + page.currency())
                .words("keeps");
        left.forEach(l -> table.row(
                l.food.name(),
                Show.whole(l.grams),
                page.currency().text(l.worth),
                l.food.perishable() ? "spoils: use soon" : "weeks"));
        table.rowLike("total", "total", "", page.currency().text(sum), "").write(html);
        html.close().line();
    }

    /** At the price of its pack, to the minor unit. */
    private static Money worth(BuyLine line) {
        return Money.rounded(line.cost().shareOf(line.leftGrams().min(line.boughtGrams()), line.boughtGrams()));
    }
}
