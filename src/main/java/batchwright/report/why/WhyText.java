package batchwright.report.why;

import batchwright.answer.CostChange;
import batchwright.answer.PlanAnswer;
import batchwright.explain.KnownCost;
import batchwright.explain.cost.NearMiss;
import batchwright.explain.cost.ProteinReach;
import batchwright.explain.cost.RuleCost;
import batchwright.explain.cost.Why;
import batchwright.food.Pack;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.foods.PackText;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import batchwright.report.print.TextTable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a plan costs what it costs: rules, protein, foods that just missed, and what each item costs. */
public final class WhyText {
    private final Why why;
    private final PlanAnswer answer;
    private final Page page;

    public WhyText(Why why, PlanAnswer answer, Page page) {
        this.why = why;
        this.answer = answer;
        this.page = page;
    }

    public void write() {
        rules();
        protein();
        misses();
        new ItemCostsText(why.items(), currency(), page).write();
    }

    private Currency currency() {
        return answer.kitchen().currency();
    }

    private KnownCost base() {
        return why.cost();
    }

    private void rules() {
        page.heading("WHY: what each rule costs, changed alone, in " + currency());
        page.gap();
        if (why.rules().isEmpty()) {
            page.paragraph(
                    "  ",
                    "  ",
                    "Not known: the plan is not proven cheapest, so there is nothing to compare with. Give it more"
                            + " --seconds, fewer days or fewer dishes.");
            return;
        }
        List<RuleCost> idle =
                why.rules().stream().filter(r -> r.changesNothing(base())).toList();
        List<RuleCost> telling = why.rules().stream()
                .filter(r -> !idle.contains(r))
                .sorted(Comparator.comparingLong(this::weight).reversed())
                .toList();
        if (!telling.isEmpty()) {
            TextTable table = table(telling);
            page.table(table);
            marks(table);
        }
        if (!idle.isEmpty()) {
            page.paragraph(
                    "  ",
                    "  ",
                    "Proven to change nothing, a little looser or tighter: "
                            + idle.stream().map(this::named).collect(Collectors.joining("; ")) + ".");
        }
    }

    /** What matters most comes first: what is saved, then what is added. */
    private long weight(RuleCost rule) {
        long saved = rule.looser()
                .map(m -> CostChange.saved(base(), m.cost()).least())
                .orElse(0L);
        long added = rule.tighter()
                .map(m -> CostChange.added(base(), m.cost()).most().orElse(0))
                .orElse(0L);
        return saved * 1_000_000 + added;
    }

    private TextTable table(List<RuleCost> rules) {
        var table = new TextTable("  ")
                .left("rule")
                .right("now")
                .right("looser")
                .right("saves")
                .right("tighter")
                .right("costs");
        for (Optional<String> eater :
                rules.stream().map(RuleCost::eater).distinct().toList()) {
            if (answer.needs().size() > 1) {
                table.row(eater.orElse("Everybody") + ":", "", "", "", "", "");
            }
            rules.stream().filter(r -> r.eater().equals(eater)).forEach(r -> row(table, r));
        }
        return table;
    }

    private void row(TextTable table, RuleCost rule) {
        table.row(
                rule.rule(),
                rule.now(),
                rule.looser().map(RuleCost.Moved::to).orElse("-"),
                rule.looser()
                        .map(m -> CostChange.saved(base(), m.cost()).asSaving(currency()))
                        .orElse(""),
                rule.tighter().map(RuleCost.Moved::to).orElse("-"),
                rule.tighter()
                        .map(m -> CostChange.added(base(), m.cost()).asCost(currency()))
                        .orElse(""));
    }

    private void marks(TextTable table) {
        String marks = (table.contains(">=") ? ">= at least that much. " : "")
                + (table.contains("<=") ? "<= at most that much, perhaps nothing. " : "")
                + (table.contains("?") ? "? not known. " : "");
        if (!marks.isEmpty()) {
            page.paragraph("  ", "  ", marks + "Time ended before these were proven; more --seconds may.");
        }
    }

    private String named(RuleCost rule) {
        String figure = rule.rule().replaceAll(", [a-z]+$", "") + " " + rule.now();
        return answer.needs().size() > 1
                ? rule.eater().map(name -> figure + " (" + name + ")").orElse(figure)
                : figure;
    }

    private void protein() {
        page.heading("WHY: protein and money");
        page.gap();
        Why.Protein p = why.protein();
        page.paragraph("  ", "    ", p.grams() + " g more protein a day" + each() + ": " + tenGrams(p) + ".");
        Money cost = base().most().orElseThrow();
        page.paragraph(
                "  ",
                "    ",
                Show.money(p.money(), currency()) + " more (" + currency().text(cost.plus(p.money())) + "): "
                        + floor(p.forMore()) + ".");
        p.forLess()
                .ifPresent(less -> page.paragraph(
                        "  ",
                        "    ",
                        Show.money(p.money(), currency()) + " less ("
                                + currency().text(cost.minus(p.money())) + "): " + floor(less) + "."));
    }

    private String each() {
        return answer.needs().size() > 1 ? " for each" : "";
    }

    private String tenGrams(Why.Protein p) {
        CostChange change = CostChange.added(base(), p.more());
        if (change.noPlan()) {
            return "no plan keeps every rule";
        }
        if (change.isNothing()) {
            return "costs nothing more";
        }
        String shown = change.asCost(currency());
        return shown.equals("?")
                ? "not known in time"
                : "costs " + shown.replace("<=", "at most ").replace(">=", "at least ") + " " + currency() + " more";
    }

    /** What a sum of money buys. */
    private String floor(ProteinReach reach) {
        return new ProteinWords(answer).buys(reach);
    }

    private void misses() {
        page.heading("WHY: foods that just missed");
        page.gap();
        if (why.misses().isEmpty()) {
            page.paragraph(
                    "  ",
                    "  ",
                    why.missesComplete()
                            ? "No food that is not bought would be bought at half its price."
                            : "Not known: time ended first.");
            return;
        }
        var table = new TextTable("  ")
                .left("food")
                .left("pack")
                .right("now " + currency())
                .right("enters at")
                .right("% less");
        why.misses().forEach(miss -> row(table, miss));
        page.table(table);
        page.paragraph(
                "  ",
                "  ",
                "enters at: at this price or less a plan that buys it is cheaper; found by planning with that price, to the"
                        + " " + smallest() + "."
                        + (table.contains(">=") ? " >= perhaps at a higher price already: time ended first." : "")
                        + (why.missesComplete() ? "" : " Time ended before every food was looked at."));
    }

    private String smallest() {
        return currency().digits() == Currency.USD.digits()
                ? "the cent"
                : currency().least().toPlainString() + " " + currency();
    }

    private void row(TextTable table, NearMiss miss) {
        Pack pack = miss.pack();
        table.row(
                pack.food().name(),
                pack.isLoose() ? PackText.label(pack) : PackText.bought(pack, 1).replaceFirst("^1 x ", ""),
                currency().text(pack.price()),
                (miss.proven() ? "" : ">=") + currency().text(miss.entersAt()),
                Show.whole(miss.shareOff() * 100));
    }
}
