package batchwright.report.why;

import batchwright.answer.PlanAnswer;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.Frontier;
import batchwright.explain.cost.Frontier.Point;
import batchwright.explain.cost.ProteinReach;
import batchwright.food.Nutrient;
import batchwright.plan.TradeOff;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.print.Page;
import batchwright.report.print.PointsChart;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The cost at other levels of protein or energy, or the protein of other budgets: a table with a chart beside the figures. */
public final class FrontierText {
    private static final int CHART = 28;
    private static final String NOW = "now";
    private final Frontier frontier;
    private final PlanAnswer answer;
    private final Page page;
    private final ProteinWords words;

    public FrontierText(Frontier frontier, PlanAnswer answer, Page page) {
        this.frontier = frontier;
        this.answer = answer;
        this.page = page;
        this.words = new ProteinWords(answer);
    }

    public void write() {
        page.heading(heading());
        page.gap();
        if (frontier.points().isEmpty()) {
            page.paragraph("  ", "  ", "Not known: time ended before any plan was found.");
            return;
        }
        TextTable table = frontier.against() == TradeOff.BUDGET ? budgets() : costs();
        page.table(table);
        notes(table);
    }

    private String heading() {
        return switch (frontier.against()) {
            case PROTEIN -> "FRONTIER: what more or less protein a day costs";
            case ENERGY -> "FRONTIER: what more or less energy a day costs";
            case BUDGET -> "FRONTIER: how much protein a day a budget buys";
        };
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }

    private boolean several() {
        return answer.needs().size() > 1;
    }

    private TextTable costs() {
        List<PointsChart.Dot> dots =
                frontier.points().stream().map(FrontierText::costDot).toList();
        var chart = new PointsChart(CHART, dots);
        boolean protein = frontier.against() == TradeOff.PROTEIN;
        var table = new TextTable("  ")
                .left("")
                .right((protein ? "protein" : "energy") + (several() ? "\nof each" : "") + "\n"
                        + (protein ? "g a day" : "kcal a day"))
                .right("cost\n" + currency());
        if (protein) {
            table.right("as cheap\nup to g");
        }
        table.left(chart.head(money(chart.least()), money(chart.most())));
        for (int i = 0; i < dots.size(); i++) {
            Point p = frontier.points().get(i);
            String now = p.inForce() ? NOW : "";
            String level = protein ? words.level(p.change()) : energy(p.change());
            String row = chart.row(dots.get(i));
            if (protein) {
                table.row(now, level, cost(p.cost()), p.reach().map(words::most).orElse(""), row);
            } else {
                table.row(now, level, cost(p.cost()), row);
            }
        }
        return table;
    }

    private String energy(int change) {
        Optional<Integer> aim =
                several() ? Optional.empty() : answer.needs().get(0).target().map(t -> t.energyAimKcal());
        return aim.map(kcal -> Integer.toString(kcal + change)).orElse(Show.signed(change));
    }

    private static PointsChart.Dot costDot(Point point) {
        KnownCost cost = point.cost();
        return cost.noPlan()
                ? PointsChart.Dot.nothing(point.inForce())
                : new PointsChart.Dot(
                        OptionalDouble.of((double) cost.least().minor()),
                        cost.most().stream().mapToDouble(Money::minor).findFirst(),
                        false,
                        point.inForce());
    }

    private String cost(KnownCost cost) {
        return cost(cost, currency());
    }

    /** As far as it is known: a sum, with a mark when it is a bound only. */
    static String cost(KnownCost cost, Currency currency) {
        if (cost.noPlan()) {
            return "no plan";
        }
        return cost.most()
                .map(money -> (cost.proven() ? "" : "<=") + currency.text(money))
                .orElse(cost.least().minor() > 0 ? ">=" + currency.text(cost.least()) : "?");
    }

    private String money(double minor) {
        return currency().text(new Money(Math.round(minor)));
    }

    private TextTable budgets() {
        List<PointsChart.Dot> dots =
                frontier.points().stream().map(FrontierText::proteinDot).toList();
        var chart = new PointsChart(CHART, dots);
        var table = new TextTable("  ")
                .left("")
                .right("budget\n" + currency())
                .right("protein" + (several() ? "\nof each" : "") + "\nup to g a day")
                .left(chart.head(words.level((int) chart.least()), words.level((int) chart.most())));
        for (int i = 0; i < dots.size(); i++) {
            Point p = frontier.points().get(i);
            table.row(
                    budgetMark(p),
                    currency().text(p.cost().least()),
                    p.reach().map(this::reached).orElse(""),
                    chart.row(dots.get(i)));
        }
        return table;
    }

    private String budgetMark(Point point) {
        if (point.inForce()) {
            return NOW;
        }
        return answer.budget().filter(point.cost().least()::equals).isPresent() ? "budget" : "";
    }

    private String reached(ProteinReach reach) {
        if (reach.atMost().isEmpty()) {
            return "no plan";
        }
        return reach.atLeast().isEmpty() ? "?" : words.most(reach);
    }

    private static PointsChart.Dot proteinDot(Point point) {
        Optional<Integer> least = point.reach().flatMap(ProteinReach::atLeast);
        Optional<Integer> most = point.reach().flatMap(ProteinReach::atMost).filter(m -> least.isPresent());
        return new PointsChart.Dot(
                least.stream().mapToDouble(g -> g).findFirst(),
                most.stream().mapToDouble(g -> g).findFirst(),
                true,
                point.inForce());
    }

    private void notes(TextTable table) {
        String what = switch (frontier.against()) {
            case PROTEIN ->
                "Protein is the least of every day. Each row is planned anew and is the cheapest plan"
                        + " there; between rows the cost lies between theirs.";
            case ENERGY ->
                "Each row is planned anew, with the energy band, fat, fibre and containers that follow from"
                        + " its energy and the protein of the plan above.";
            case BUDGET ->
                "The most protein that every day can be made to hold within the budget, every other rule"
                        + " being kept.";
        };
        page.paragraph("  ", "  ", what + inForce());
        String marks = (table.contains("<=") ? "<= at most, " : "")
                + (table.contains(">=") ? ">= at least, " : "")
                + (table.contains("?") ? "? not known, " : "");
        if (!marks.isEmpty()) {
            page.paragraph(
                    "  ", "  ", marks + "because time ended before the proof; more --seconds may. " + band(table));
        }
        if (frontier.points().stream()
                .anyMatch(p -> p.reach().filter(r -> r.highest() && r.proven()).isPresent())) {
            page.paragraph("  ", "  ", "More protein than 3.1 g per kg is not asked for.");
        }
    }

    private static String band(TextTable table) {
        return table.contains(String.valueOf(PointsChart.BAND)) ? ": where it may lie." : "";
    }

    private String inForce() {
        String floors = several() && frontier.against() != TradeOff.ENERGY
                ? " The floor of each moves by the same grams; now "
                        + answer.needs().stream()
                                .map(n -> n.eater().name() + " "
                                        + n.target()
                                                .map(t ->
                                                        t.day(Nutrient.PROTEIN).least())
                                                .orElse(0) + " g")
                                .collect(Collectors.joining(", "))
                        + "."
                : "";
        String aims =
                several() && frontier.against() == TradeOff.ENERGY ? " The aim of each moves by the same kcal." : "";
        boolean marked = frontier.points().stream().anyMatch(Point::inForce);
        return floors + aims + (marked ? " now, #: the plan above." : "");
    }
}
