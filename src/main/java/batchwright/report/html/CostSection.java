package batchwright.report.html;

import batchwright.answer.Leftover;
import batchwright.plan.Purchase;
import batchwright.plan.Session;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.html.chart.BarChart;
import batchwright.report.html.chart.BarChart.Bar;
import batchwright.report.html.part.Figure;
import batchwright.report.html.part.Table;
import batchwright.report.print.Show;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What drives the cost, and what of it is left over. */
public record CostSection(Optional<Figure> drivers, Optional<Leftovers> left) {
    private static final int MOST_BARS = 8;
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    private record Spent(String name, Money money, String look) {}

    /** What stays in the packs. */
    public record Leftovers(String says, Table table) {}

    static CostSection of(PlanPage page) {
        return new CostSection(drivers(page, spent(page.plan())), leftovers(page));
    }

    /** Dearest first; beyond the eighth all in one. */
    private static List<Spent> spent(Session session) {
        List<Spent> all = session.shopping().stream()
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

    private static Optional<Figure> drivers(PlanPage page, List<Spent> spent) {
        if (spent.isEmpty()) {
            return Optional.empty();
        }
        Money cost = page.plan().cost();
        Spent first = spent.get(0);
        String says = "The dearest is " + first.name + ": " + Show.money(first.money, page.currency()) + ", "
                + share(first.money, cost) + " % of " + Show.money(cost, page.currency()) + ".";
        List<Bar> bars = spent.stream()
                .map(s -> new Bar(s.name, s.money.minor(), page.currency().text(s.money), s.look))
                .toList();
        return Optional.of(new Figure(
                "cost",
                "What drives it",
                says,
                Optional.of(BarChart.draw(bars, says)),
                Optional.of(table(spent, cost, page.currency()))));
    }

    private static Table table(List<Spent> spent, Money cost, Currency currency) {
        var table = new Table("What drives the cost")
                .words("food")
                .numbers(currency.code())
                .numbers("share %")
                .numbers("running share %");
        Money running = Money.ZERO;
        for (Spent s : spent) {
            running = running.plus(s.money);
            table.row(s.name, currency.text(s.money), share(s.money, cost), share(running, cost));
        }
        return table.rowLike("total", "total", currency.text(cost), "100", "");
    }

    private static String share(Money part, Money whole) {
        return BigDecimal.valueOf(part.minor())
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(Math.max(1, whole.minor())), 0, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static Optional<Leftovers> leftovers(PlanPage page) {
        List<Leftover> left = Leftover.of(page.plan());
        return left.isEmpty() ? Optional.empty() : Optional.of(leftovers(left, page.currency()));
    }

    private static Leftovers leftovers(List<Leftover> left, Currency currency) {
        Money sum = Leftover.sum(left);
        boolean spoils = left.stream().anyMatch(l -> !l.lasts());
        String says = "Left over is " + Show.money(sum, currency) + " worth of food"
                + (spoils ? "; what spoils first stands on top." : ", none of which spoils soon.");
        var table = new Table("When the plan is eaten")
                .words("food")
                .numbers("left g")
                .numbers("worth " + currency)
                .words("keeps");
        left.forEach(l -> table.row(
                l.food().name(),
                Show.whole(l.grams()),
                currency.text(l.worth()),
                l.lasts() ? "weeks" : "spoils: use soon"));
        return new Leftovers(says, table.rowLike("total", "total", "", currency.text(sum), ""));
    }
}
