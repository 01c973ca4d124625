package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.person.Eater;
import batchwright.plan.EaterDays;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.plan.PlanText;
import batchwright.report.plan.SessionsAnswer;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.List;

/** The answer for several sessions: what all cost together, whether every day is on target, and the way to each session. */
final class SessionsSection {
    private final SessionsAnswer answer;
    private final List<PlanPage> pages;
    private final Currency currency;

    SessionsSection(SessionsAnswer answer, List<PlanPage> pages) {
        this.answer = answer;
        this.pages = pages;
        this.currency = answer.whole().kitchen().currency();
    }

    void write(Html html) {
        html.open("header").line();
        html.element(
                        "p",
                        "Batchwright · first cooking day "
                                + Dates.inFull(answer.whole().kitchen().cookingDay()),
                        "class",
                        "whose")
                .line();
        html.open("h1").name(PlanPage.forWhom(answer.whole())).close().line();
        tiles(html);
        List<EaterDays> eaters = pages.get(0).plan().eaters();
        eaters.forEach(
                eater -> OnTarget.write(html, eater.seat(), days(eater.seat().eater())));
        html.open("p", "class", "note")
                .text("Every figure was worked out again from the files. They are estimates and no medical advice: ")
                .element("a", "read the cautions", "href", "#cautions")
                .text(".")
                .close()
                .line();
        if (answer.shopOnce()) {
            html.open("p")
                    .element("a", "One shopping list for all sessions", "href", "#shop")
                    .close()
                    .line();
        }
        pages.forEach(page -> session(html, page));
        html.close().line();
    }

    private void tiles(Html html) {
        html.open("dl", "class", "tiles").line();
        Tile.write(
                html,
                "Cost",
                Show.money(answer.cost(), currency),
                Tile.budget(answer.whole().budget(), answer.cost(), currency));
        Tile.write(html, "Proof", planned() ? "Proven cheapest" : "Not proven cheapest", proof());
        Tile.write(
                html,
                "To cook",
                Show.count(pages.size(), "session", "sessions"),
                Show.count(pages.stream().mapToInt(PlanPage::containers).sum(), "container", "containers"));
        int minutes = pages.stream().mapToInt(p -> p.schedule().minutes()).sum();
        int hands = pages.stream().mapToInt(p -> p.schedule().handsOnMinutes()).sum();
        Tile.write(
                html,
                "Time to cook, all sessions",
                "About " + ScheduleWords.duration(minutes),
                ScheduleWords.duration(hands) + " of it hands on");
        html.close().line();
    }

    private boolean planned() {
        return answer.status() == PlanAnswer.Status.PLANNED;
    }

    private String proof() {
        Proof proof = answer.whole().proof();
        return planned()
                ? "no other sessions cost less"
                : "at most " + PlanText.percentAbove(answer.cost(), proof.lowerBound())
                        + " % above the cheapest; none cost less than " + Show.money(proof.lowerBound(), currency)
                        + ", as if what keeps were sold by the gram";
    }

    private List<EatenDay> days(Eater eater) {
        return pages.stream()
                .flatMap(page -> page.plan().eaters().stream()
                        .filter(days -> days.seat().eater().equals(eater))
                        .flatMap(days -> page.eaten(days).stream()))
                .toList();
    }

    private void session(Html html, PlanPage page) {
        html.open("div", "class", "session").open("p");
        html.element("strong", "Session " + page.session());
        html.text(": cook on day " + page.firstDay() + ", "
                + Dates.shortly(page.answer().kitchen().cookingDay()) + ", for days " + page.firstDay() + " to "
                + (page.firstDay() + page.answer().days() - 1) + ": "
                + Show.count(page.plan().batches().size(), "dish", "dishes") + ", "
                + Show.count(page.containers(), "container", "containers") + ", about "
                + ScheduleWords.duration(page.schedule().minutes())
                + (answer.shopOnce()
                        ? "."
                        : "; shop for " + Show.money(page.plan().cost(), currency) + "."));
        html.close().line();
        AnswerSection.links(html, page, "Session " + page.session(), answer.shopOnce() ? "At home" : "Shop");
        html.close().line();
    }
}
