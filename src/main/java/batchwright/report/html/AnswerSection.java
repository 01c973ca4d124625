package batchwright.report.html;

import batchwright.food.Nutrient;
import batchwright.person.DayTarget;
import batchwright.plan.EaterDays;
import batchwright.plan.Proof;
import batchwright.quantity.Money;
import batchwright.report.Dates;
import batchwright.report.PlanAnswer;
import batchwright.report.ScheduleWords;
import batchwright.report.Show;
import batchwright.report.Work;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** The answer first: what it costs, how sure that is, and whether every day holds what it must. */
final class AnswerSection {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);
    private final PlanPage page;

    AnswerSection(PlanPage page) {
        this.page = page;
    }

    void write(Html html) {
        html.open("header").line();
        html.element(
                        "p",
                        "Batchwright · cooking day "
                                + Dates.inFull(page.answer().kitchen().cookingDay()),
                        "class",
                        "whose")
                .line();
        html.open("h1").name(page.forWhom()).close().line();
        html.open("dl", "class", "tiles").line();
        tile(html, "Cost", Show.money(page.plan().cost(), page.currency()), budget());
        tile(html, "Proof", planned() ? "Proven cheapest" : "Not proven cheapest", proof());
        tile(
                html,
                "To cook",
                Show.count(page.plan().batches().size(), "dish", "dishes"),
                Show.count(page.containers(), "container", "containers"));
        tile(
                html,
                "Time to cook",
                "About " + ScheduleWords.duration(page.schedule().minutes()),
                work());
        html.close().line();
        page.plan().eaters().forEach(eater -> eater(html, eater));
        html.open("p", "class", "note")
                .text("Every figure was worked out again from the files. They are estimates and no medical advice: ")
                .element("a", "read the cautions", "href", "#cautions")
                .text(".")
                .close()
                .line();
        html.open("nav", "aria-label", "Pages");
        for (String[] link :
                new String[][] {{"plan", "Plan"}, {"shop", "Shop"}, {"cook", "Cook"}, {"labels", "Labels"}}) {
            html.element("a", link[1], "href", "#" + link[0]);
        }
        html.close().close().line();
    }

    private String work() {
        boolean early = page.plan().batches().stream()
                .anyMatch(b -> !Work.of(b).dayBefore().isEmpty());
        return ScheduleWords.duration(page.schedule().handsOnMinutes()) + " of it hands on"
                + (early ? "; something to do the evening before" : "");
    }

    private boolean planned() {
        return page.answer().status() == PlanAnswer.Status.PLANNED;
    }

    private static void tile(Html html, String what, String figure, String note) {
        html.open("div").element("dt", what);
        html.open("dd").element("strong", figure);
        if (!note.isEmpty()) {
            html.element("span", note);
        }
        html.close().close().line();
    }

    private String budget() {
        return page.answer()
                .budget()
                .map(budget ->
                        new Money(budget.minor() - page.plan().cost().minor()) + " under the budget of " + budget)
                .orElse("no budget was set");
    }

    private String proof() {
        Proof proof = page.answer().proof();
        return planned()
                ? "no plan that keeps every rule costs less"
                : "at most " + percentAbove() + " % above the cheapest; none costs less than "
                        + Show.money(proof.lowerBound(), page.currency());
    }

    private String percentAbove() {
        long bound = page.answer().proof().lowerBound().minor();
        if (bound == 0) {
            return "an unknown number of";
        }
        return BigDecimal.valueOf(page.plan().cost().minor() - bound)
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(bound), 1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private void eater(Html html, EaterDays eater) {
        DayTarget target = eater.seat().target();
        html.open("p", "class", "hit").open("strong");
        html.name(eater.seat().eater().name()).close();
        html.text(": " + range(eater, Nutrient.ENERGY) + " kcal a day (target " + target.energyAimKcal() + ", "
                + target.energyLeastKcal() + " to " + target.energyMostKcal() + ") and "
                + range(eater, Nutrient.PROTEIN) + " g protein (at least " + target.proteinLeastG()
                + "). Every day is on target.");
        html.close().line();
    }

    private String range(EaterDays eater, Nutrient nutrient) {
        List<Integer> totals = eater.days().stream()
                .map(day -> EatenDay.of(page.plan(), eater, day).total(nutrient))
                .sorted()
                .toList();
        int least = totals.get(0);
        int most = totals.get(totals.size() - 1);
        return least == most ? Integer.toString(least) : least + " to " + most;
    }
}
