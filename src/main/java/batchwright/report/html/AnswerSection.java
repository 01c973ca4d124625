package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Proof;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.cooking.Work;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.List;

/** The answer first: what it costs, how sure that is, and whether every day holds what it must. */
final class AnswerSection {
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
        Tile.write(html, "Cost", Show.money(page.plan().cost(), page.currency()), budget());
        Tile.write(html, "Proof", planned() ? "Proven cheapest" : "Not proven cheapest", proof());
        Tile.write(
                html,
                "To cook",
                Show.count(page.plan().batches().size(), "dish", "dishes"),
                Show.count(page.containers(), "container", "containers"));
        Tile.write(
                html,
                "Time to cook",
                "About " + ScheduleWords.duration(page.schedule().minutes()),
                work());
        html.close().line();
        page.plan().eaters().forEach(eater -> OnTarget.write(html, eater.seat(), page.eaten(eater)));
        html.open("p", "class", "note")
                .text("Every figure was worked out again from the files. They are estimates and no medical advice: ")
                .element("a", "read the cautions", "href", "#cautions")
                .text(".")
                .close()
                .line();
        links(html, page, "Pages", "Shop");
        html.close().line();
    }

    private String work() {
        boolean early =
                page.plan().batches().stream().anyMatch(b -> !Work.dayBefore(b).isEmpty());
        return ScheduleWords.duration(page.schedule().handsOnMinutes()) + " of it hands on"
                + (early ? "; something to do the evening before" : "");
    }

    private boolean planned() {
        return page.answer().status() == PlanAnswer.Status.PLANNED;
    }

    private String budget() {
        return Tile.budget(page.answer().budget(), page.plan().cost(), page.currency());
    }

    private String proof() {
        Proof proof = page.answer().proof();
        return planned()
                ? "no plan that keeps every rule costs less"
                : "at most " + PlanText.percentAbove(page.plan().cost(), proof.lowerBound())
                        + " % above the cheapest; none costs less than "
                        + Show.money(proof.lowerBound(), page.currency());
    }

    /**
     * To the pages of a session.
     *
     * @param shop what that page is called
     */
    static void links(Html html, PlanPage page, String label, String shop) {
        html.open("nav", "aria-label", label);
        for (String name : List.of("plan", "shop", "cook", "labels")) {
            html.element("a", name.equals("shop") ? shop : Show.capital(name), "href", "#" + page.id(name));
        }
        html.close().line();
    }
}
