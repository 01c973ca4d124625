package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.plan.SecondOpinion;
import batchwright.quantity.Money;
import batchwright.report.print.Page;
import batchwright.report.print.Show;

/** What another solver says of the answer. */
final class SecondOpinionText {
    private final SecondOpinion opinion;
    private final PlanAnswer answer;
    private final Page page;

    SecondOpinionText(SecondOpinion opinion, PlanAnswer answer, Page page) {
        this.opinion = opinion;
        this.answer = answer;
        this.page = page;
    }

    void write() {
        page.heading("SECOND OPINION: " + opinion.solver() + " " + verdict());
        opinion.sameDishes()
                .ifPresentOrElse(
                        least ->
                                say("With the dishes of this plan it finds " + money(least) + " to be the least cost."),
                        () -> opinion.found()
                                .ifPresent(cost -> say("The cheapest plan it found costs " + money(cost) + ".")));
        opinion.bound()
                .ifPresent(least -> say(
                        "With any dishes, its relaxation proves that no plan costs less than " + money(least) + "."));
        say(
                switch (opinion.verdict()) {
                    case AGREES ->
                        answer.plan().isPresent()
                                ? "That is what this plan costs."
                                : "It finds no plan that keeps every rule either.";
                    case NOT_FINISHED ->
                        "Nothing of this contradicts the answer above, but it was not done in the time it had. Try more"
                                + " --seconds, fewer days, or fewer dishes.";
                    case DISAGREES ->
                        "One of the two answers is wrong, and that is a fault of ours. Report it with your folder"
                                + " of files and the command that you gave.";
                });
    }

    private String verdict() {
        return switch (opinion.verdict()) {
            case AGREES -> "agrees";
            case NOT_FINISHED -> "is not finished";
            case DISAGREES -> "disagrees";
        };
    }

    private void say(String sentence) {
        page.paragraph("  ", "  ", sentence);
    }

    private String money(Money amount) {
        return Show.money(amount, answer.kitchen().currency());
    }
}
