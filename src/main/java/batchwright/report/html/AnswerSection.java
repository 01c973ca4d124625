package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.cooking.Work;
import batchwright.report.html.part.Tile;
import batchwright.report.html.part.Way;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.List;
import java.util.Optional;

/**
 * The answer first: what it costs, how sure that is, and whether every day holds what it must.
 *
 * @param hits one for each eater
 * @param shopOnce whether there is one shopping list for several sessions
 * @param ways to the pages of each session
 */
public record AnswerSection(
        String whose, String forWhom, List<Tile> tiles, List<OnTarget> hits, boolean shopOnce, List<Way> ways) {
    static AnswerSection of(PlanPage page) {
        return new AnswerSection(
                "Batchwright · cooking day "
                        + Dates.inFull(page.answer().kitchen().cookingDay()),
                page.forWhom(),
                tiles(page),
                page.plan().eaters().stream()
                        .map(eater -> OnTarget.of(eater.seat(), page.eaten(eater)))
                        .toList(),
                false,
                List.of(page.way("Pages", "", "Shop")));
    }

    private static List<Tile> tiles(PlanPage page) {
        Money cost = page.plan().cost();
        return List.of(
                new Tile(
                        "Cost",
                        Show.money(cost, page.currency()),
                        budget(page.answer().budget(), cost, page.currency())),
                new Tile("Proof", isPlanned(page) ? "Proven cheapest" : "Not proven cheapest", proof(page)),
                new Tile(
                        "To cook",
                        Show.count(page.plan().batches().size(), "dish", "dishes"),
                        Show.count(page.containers(), "container", "containers")),
                new Tile(
                        "Time to cook",
                        "About " + ScheduleWords.duration(page.schedule().minutes()),
                        work(page)));
    }

    private static String work(PlanPage page) {
        boolean early = page.plan().batches().stream()
                .anyMatch(b -> !Work.of(b).dayBefore().isEmpty());
        return ScheduleWords.duration(page.schedule().handsOnMinutes()) + " of it hands on"
                + (early ? "; something to do the evening before" : "");
    }

    private static boolean isPlanned(PlanPage page) {
        return page.answer().status() == PlanAnswer.Status.PLANNED;
    }

    /** How a cost stands to the budget. */
    static String budget(Optional<Money> budget, Money cost, Currency currency) {
        return Show.underBudget(budget, cost, currency).orElse("no budget was set");
    }

    private static String proof(PlanPage page) {
        Proof proof = page.answer().proof();
        return isPlanned(page)
                ? "no plan that keeps every rule costs less"
                : "at most " + PlanText.percentAbove(page.plan().cost(), proof.lowerBound())
                        + " % above the cheapest; none costs less than "
                        + Show.money(proof.lowerBound(), page.currency());
    }
}
