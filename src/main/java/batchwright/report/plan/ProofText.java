package batchwright.report.plan;

import batchwright.answer.PlanAnswer;
import batchwright.plan.Plan;
import batchwright.report.print.Page;
import batchwright.report.print.Show;
import java.util.ArrayList;
import java.util.List;

/** How sure it is that no plan is cheaper, and that the plan is right. */
final class ProofText {
    private final PlanAnswer answer;
    private final Plan plan;
    private final Page page;

    ProofText(PlanAnswer answer, Plan plan, Page page) {
        this.answer = answer;
        this.plan = plan;
        this.page = page;
    }

    void write() {
        page.heading("PROOF");
        say(isProven(answer) ? proven() : plan.isCookedOnce() ? notProven() : sessionsNotProven());
        if (!plan.isCookedOnce() && !isProven(answer)) {
            alone();
        }
        answer.audit()
                .ifPresent(audit -> say("Every number above was worked out again from the files: "
                        + Show.count(audit.checks().size(), "check", "checks") + " passed."));
    }

    private static boolean isProven(PlanAnswer answer) {
        return answer.status() == PlanAnswer.Status.PLANNED;
    }

    private String proven() {
        return (plan.isCookedOnce() ? "No plan that keeps every rule costs less: " : "No other sessions cost less: ")
                + searched() + ".";
    }

    private String notProven() {
        if (answer.proof().closeEnough()) {
            return "As close to the cheapest as was asked for: no plan costs less than " + bound() + ", this one "
                    + percentAbove() + " % more; " + searched() + ".";
        }
        if (answer.kitchen().equipment().limits().doneWithinMinutes().isPresent()) {
            return "Not proven: no plan costs less than " + bound() + ", this one " + percentAbove() + " % more; "
                    + searched()
                    + ". How long cooking takes is only known from the order of work of a whole plan, so the"
                    + " search takes longer with --done-within. Try more time with --seconds.";
        }
        return (answer.proof().interrupted() ? "Interrupted" : "Time ended")
                + " before the proof: no plan costs less than "
                + bound() + ", this one " + percentAbove() + " % more; " + searched()
                + ". Try more time with --seconds, or profiles that name the few snacks an eater likes (snacks: only).";
    }

    private String sessionsNotProven() {
        return (answer.proof().interrupted() ? "Interrupted before the proof. " : "")
                + "Not proven: no sessions cost less than " + bound()
                + ", as if what keeps were sold by the gram; these "
                + percentAbove() + " % more; " + searched() + ". More time: --seconds.";
    }

    private String bound() {
        return Show.money(answer.proof().lowerBound(), answer.kitchen().currency());
    }

    private String percentAbove() {
        return PlanText.percentAbove(plan.cost(), answer.proof().lowerBound());
    }

    private String searched() {
        return PlanText.searched(answer.proof());
    }

    private void alone() {
        List<PlanAnswer> sessions = answer.sessions();
        List<String> proven = new ArrayList<>();
        for (int s = 0; s < sessions.size(); s++) {
            if (isProven(sessions.get(s))) {
                proven.add(Integer.toString(s + 1));
            }
        }
        if (!proven.isEmpty()) {
            say("Proven cheapest for its own days, with what the sessions before leave: session "
                    + String.join(", ", proven) + ".");
        }
    }

    private void say(String sentence) {
        page.paragraph("  ", "  ", sentence);
    }
}
