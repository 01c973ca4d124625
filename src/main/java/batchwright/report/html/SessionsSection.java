package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.person.Eater;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.html.part.Tile;
import batchwright.report.html.part.Way;
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

    AnswerSection section() {
        return new AnswerSection(
                "Batchwright · first cooking day "
                        + Dates.inFull(answer.whole().kitchen().cookingDay()),
                PlanPage.forWhom(answer.whole()),
                tiles(),
                pages.get(0).plan().eaters().stream()
                        .map(eater ->
                                OnTarget.of(eater.seat(), days(eater.seat().eater())))
                        .toList(),
                answer.shopOnce(),
                pages.stream().map(this::way).toList());
    }

    private List<Tile> tiles() {
        int minutes = pages.stream().mapToInt(p -> p.schedule().minutes()).sum();
        int hands = pages.stream().mapToInt(p -> p.schedule().handsOnMinutes()).sum();
        int containers = pages.stream().mapToInt(PlanPage::containers).sum();
        return List.of(
                new Tile(
                        "Cost",
                        Show.money(answer.cost(), currency),
                        AnswerSection.budget(answer.whole().budget(), answer.cost(), currency)),
                new Tile("Proof", planned() ? "Proven cheapest" : "Not proven cheapest", proof()),
                new Tile(
                        "To cook",
                        Show.count(pages.size(), "session", "sessions"),
                        Show.count(containers, "container", "containers")),
                new Tile(
                        "Time to cook, all sessions",
                        "About " + ScheduleWords.duration(minutes),
                        ScheduleWords.duration(hands) + " of it hands on"));
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

    private Way way(PlanPage page) {
        String says = "cook on day " + page.firstDay() + ", "
                + Dates.shortly(page.answer().kitchen().cookingDay()) + ", for days " + page.firstDay() + " to "
                + (page.firstDay() + page.answer().days() - 1) + ": "
                + Show.count(page.plan().batches().size(), "dish", "dishes") + ", "
                + Show.count(page.containers(), "container", "containers") + ", about "
                + ScheduleWords.duration(page.schedule().minutes())
                + (answer.shopOnce()
                        ? "."
                        : "; shop for " + Show.money(page.plan().cost(), currency) + ".");
        return page.way("Session " + page.session(), says, answer.shopOnce() ? "At home" : "Shop");
    }
}
