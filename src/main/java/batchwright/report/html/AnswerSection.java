package batchwright.report.html;

import batchwright.answer.PlanAnswer;
import batchwright.person.Eater;
import batchwright.plan.Plan;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.report.cooking.ScheduleWords;
import batchwright.report.cooking.Work;
import batchwright.report.plan.PlanText;
import batchwright.report.print.Dates;
import batchwright.report.print.Show;
import java.util.List;

/** The answer first: what it costs, how sure that is, whether every day holds what it must, and the way to the pages. */
final class AnswerSection {
    private final PlanAnswer answer;
    private final Plan plan;
    private final List<PlanPage> sessions;
    private final Currency currency;

    /** @param sessions one for each cooking session of the plan */
    AnswerSection(PlanAnswer answer, Plan plan, List<PlanPage> sessions) {
        this.answer = answer;
        this.plan = plan;
        this.sessions = sessions;
        this.currency = answer.kitchen().currency();
    }

    void write(Html html) {
        boolean once = plan.isCookedOnce();
        html.open("header").line();
        html.element(
                        "p",
                        "Batchwright · " + (once ? "" : "first ") + "cooking day "
                                + Dates.inFull(answer.kitchen().cookingDay()),
                        "class",
                        "whose")
                .line();
        html.open("h1").name(PlanPage.forWhom(answer)).close().line();
        html.open("dl", "class", "tiles").line();
        Tile.write(
                html, "Cost", Show.money(plan.cost(), currency), Tile.budget(answer.budget(), plan.cost(), currency));
        Tile.write(html, "Proof", planned() ? "Proven cheapest" : "Not proven cheapest", proof());
        Tile.write(
                html,
                "To cook",
                once
                        ? Show.count(plan.batches().size(), "dish", "dishes")
                        : Show.count(sessions.size(), "session", "sessions"),
                Show.count(sessions.stream().mapToInt(PlanPage::containers).sum(), "container", "containers"));
        Tile.write(
                html,
                once ? "Time to cook" : "Time to cook, all sessions",
                "About "
                        + ScheduleWords.duration(sessions.stream()
                                .mapToInt(page -> page.schedule().minutes())
                                .sum()),
                work());
        html.close().line();
        plan.first()
                .eaters()
                .forEach(eater ->
                        OnTarget.write(html, eater.seat(), days(eater.seat().eater())));
        html.open("p", "class", "note")
                .text("Every figure was worked out again from the files. They are estimates and no medical advice: ")
                .element("a", "read the cautions", "href", "#cautions")
                .text(".")
                .close()
                .line();
        if (once) {
            links(html, sessions.get(0), "Pages", "Shop");
        } else {
            toSessions(html);
        }
        html.close().line();
    }

    private String work() {
        int hands = sessions.stream()
                .mapToInt(page -> page.schedule().handsOnMinutes())
                .sum();
        boolean early = plan.isCookedOnce()
                && plan.batches().stream().anyMatch(b -> !Work.of(b).dayBefore().isEmpty());
        return ScheduleWords.duration(hands) + " of it hands on"
                + (early ? "; something to do the evening before" : "");
    }

    private boolean planned() {
        return answer.status() == PlanAnswer.Status.PLANNED;
    }

    private String proof() {
        Proof proof = answer.proof();
        boolean once = plan.isCookedOnce();
        if (planned()) {
            return once ? "no plan that keeps every rule costs less" : "no other sessions cost less";
        }
        return "at most " + PlanText.percentAbove(plan.cost(), proof.lowerBound()) + " % above the cheapest; "
                + (once ? "none costs less than " : "none cost less than ") + Show.money(proof.lowerBound(), currency)
                + (once ? "" : ", as if what keeps were sold by the gram");
    }

    private List<EatenDay> days(Eater eater) {
        return sessions.stream()
                .flatMap(page -> page.plan().eaters().stream()
                        .filter(days -> days.seat().eater().equals(eater))
                        .flatMap(days -> page.eaten(days).stream()))
                .toList();
    }

    private void toSessions(Html html) {
        if (answer.asked().shopOnce()) {
            html.open("p")
                    .element("a", "One shopping list for all sessions", "href", "#shop")
                    .close()
                    .line();
        }
        sessions.forEach(page -> session(html, page));
    }

    private void session(Html html, PlanPage page) {
        boolean shopOnce = answer.asked().shopOnce();
        html.open("div", "class", "session").open("p");
        html.element("strong", "Session " + page.session());
        html.text(": cook on day " + page.firstDay() + ", "
                + Dates.shortly(page.plan().cookingDay()) + ", for days "
                + page.firstDay() + " to " + page.plan().lastDay() + ": "
                + Show.count(page.plan().batches().size(), "dish", "dishes") + ", "
                + Show.count(page.containers(), "container", "containers") + ", about "
                + ScheduleWords.duration(page.schedule().minutes())
                + (shopOnce ? "." : "; shop for " + Show.money(page.plan().cost(), currency) + "."));
        html.close().line();
        links(html, page, "Session " + page.session(), shopOnce ? "At home" : "Shop");
        html.close().line();
    }

    /**
     * To the pages of a session.
     *
     * @param shop what that page is called
     */
    private static void links(Html html, PlanPage page, String label, String shop) {
        html.open("nav", "aria-label", label);
        for (String name : List.of("plan", "shop", "cook", "labels")) {
            html.element("a", name.equals("shop") ? shop : Show.capital(name), "href", "#" + page.id(name));
        }
        html.close().line();
    }
}
