package batchwright.report.html;

import batchwright.plan.Clash;
import batchwright.report.PlanAnswer;
import batchwright.report.Show;

/** There is no plan: why, and what would make one possible. No figure of anybody's body or needs is on it. */
final class NoPlanPage {
    private final PlanAnswer answer;

    NoPlanPage(PlanAnswer answer) {
        this.answer = answer;
    }

    void write(Html html) {
        html.open("header")
                .open("h1")
                .name(PlanPage.forWhom(answer))
                .close()
                .close()
                .line();
        html.open("main")
                .open("section", "class", "page")
                .element("h2", "No plan")
                .line();
        html.element("p", says(), "class", "says").line();
        if (!answer.clashes().isEmpty()) {
            html.open("ul").line();
            answer.clashes().forEach(clash -> clash(html, clash));
            html.close().line();
        }
        if (answer.stoppedByCaution()) {
            CautionsSection.write(html, answer);
        }
        html.close().close().line();
    }

    private String says() {
        if (answer.stoppedByCaution()) {
            return "A caution stops it.";
        }
        return answer.status() == PlanAnswer.Status.NOT_PROVEN
                ? "No plan was found in the time given, and no proof that there is none. Give it more time (--seconds), or"
                        + " ask for fewer days."
                : "No plan keeps every rule"
                        + answer.budget()
                                .map(b -> " within "
                                        + Show.money(b, answer.kitchen().currency()))
                                .orElse("")
                        + ". These rules cannot all hold:";
    }

    private static void clash(Html html, Clash clash) {
        html.open("li").text(Show.capital(clash.rule()) + ": " + clash.says() + ".");
        if (!clash.cure().isEmpty()) {
            html.text(" Cure: " + clash.cure() + ".");
        }
        if (!clash.tryThis().isEmpty()) {
            html.text(" Try: ").element("code", clash.tryThis());
        }
        html.close().line();
    }
}
