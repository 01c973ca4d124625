package batchwright.report.html;

import batchwright.answer.Notice;
import batchwright.answer.PlanAnswer;
import batchwright.plan.Clash;
import batchwright.report.plan.NoPlanWords;
import batchwright.report.print.RemedyText;
import batchwright.report.print.Show;

/** There is no plan: why, and what would make one possible. No figure of anybody's body or needs is on it. */
final class NoPlanPage {
    private final PlanAnswer answer;
    private final NoPlanWords words;

    NoPlanPage(PlanAnswer answer) {
        this.answer = answer;
        this.words = new NoPlanWords(answer);
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
        if (answer.stoppedByCaution()) {
            CautionsSection.write(html, Notice.of(answer), answer.needs().size());
        } else {
            words.overBudget().filter(x -> !proven()).ifPresent(says -> html.element("p", says));
            hints(html);
            words.stuck().ifPresent(says -> html.element("p", says));
        }
        html.close().close().line();
    }

    private boolean proven() {
        return answer.status() == PlanAnswer.Status.NO_PLAN;
    }

    private String says() {
        if (answer.stoppedByCaution()) {
            return "A caution stops it.";
        }
        return proven()
                ? "No plan keeps every rule"
                        + answer.budget()
                                .map(b -> " within "
                                        + Show.money(b, answer.kitchen().currency()))
                                .orElse("")
                        + "."
                : "No plan was found in the time given, and no proof that there is none.";
    }

    private void hints(Html html) {
        if (!proven()) {
            html.element(
                    "p",
                    "Try more time with --seconds, fewer days, or profiles that name the few snacks an eater likes"
                            + " (snacks: only).");
        } else if (answer.clashes().isEmpty()) {
            html.element("p", "Try a larger --budget or more --dishes, or loosen a wish in the profile.");
        } else {
            html.element("p", words.heading()).open("ul", "class", "clashes").line();
            words.clashes().forEach(clash -> clash(html, clash));
            words.perhaps().ifPresent(perhaps -> html.element("li", perhaps).line());
            html.close().line();
            words.doubt().ifPresent(doubt -> html.element("p", doubt));
        }
    }

    private void clash(Html html, Clash clash) {
        html.open("li").open("strong").text(Show.capital(clash.rule())).close();
        html.text(": " + clash.says() + ".");
        words.cure(clash).ifPresent(cure -> html.text(" " + cure));
        clash.remedy().ifPresent(remedy -> html.text(" Try: ").element("code", RemedyText.of(remedy)));
        html.close().line();
    }
}
