package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.HealthEffect;
import batchwright.person.HealthGroup;
import batchwright.person.HealthQuestion;
import batchwright.person.HealthQuestion.Advice;
import batchwright.person.HealthQuestion.Outcomes;
import batchwright.person.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What follows from the answers to questions of health: the rows of health_questions.csv, for one goal. */
public final class AnswerCautions {
    private final Eater eater;
    private final Health health;
    private final WeeklyChange change;
    private final AnswerLimits limits;
    private final List<HealthFinding> findings = new ArrayList<>();

    private AnswerCautions(GoalFinding goal, Targets targets) {
        this.eater = goal.eater();
        this.health = eater.health();
        this.change = goal.change();
        this.limits = new AnswerLimits(goal, targets.day());
    }

    public static List<Caution> of(GoalFinding goal, Targets targets) {
        return findings(goal, targets).stream().map(HealthFinding::caution).toList();
    }

    public static List<HealthFinding> findings(GoalFinding goal, Targets targets) {
        var check = new AnswerCautions(goal, targets);
        check.findings.addAll(SignsTogether.of(check.eater));
        boolean themes = check.findings.isEmpty();
        check.health.yes().stream()
                .filter(question -> themes || !question.has(HealthEffect.EATING_THEME))
                .forEach(check::yes);
        check.health.unclear().forEach(check::unclear);
        check.findings.addAll(NotSaid.of(check.eater, check.change));
        return List.copyOf(check.findings);
    }

    private void yes(HealthQuestion question) {
        Outcome listed = outcome(question);
        boolean hides = question.has(HealthEffect.HIDES_FIGURES);
        Optional<String> limit = hides || listed == Outcome.REFUSE ? Optional.empty() : limits.refusal(question);
        boolean agreed = health.answer(question) == Answer.AGREED && listed == Outcome.ASK;
        Outcome outcome = limit.isPresent() ? Outcome.REFUSE : agreed ? Outcome.WARN : listed;
        if (outcome != Outcome.PLAN) {
            String text = question.afterYes().advice().why() + " " + limit.orElseGet(() -> end(outcome, question));
            add(outcome, question.key(), text, hides, question.afterYes().source());
        }
    }

    private static String end(Outcome outcome, HealthQuestion question) {
        Advice advice = question.afterYes().advice();
        return switch (outcome) {
            case PLAN, WARN -> advice.then();
            case ASK ->
                "No plan is made for this goal until " + advice.clinician()
                        + " agrees to it; then the answer is \"agreed\" instead of yes.";
            case REFUSE ->
                "So no plan is made" + (question.afterYes().outcomes().hold() == Outcome.REFUSE ? "" : " for this goal")
                        + ": ask " + advice.clinician() + ".";
        };
    }

    /** Something of a group applies, and nobody says what: as strict as the strictest question of it. */
    private void unclear(HealthGroup group) {
        List<HealthQuestion> open = group.questions().stream()
                .filter(question -> question.concerns(eater.body().sex()))
                .filter(question -> health.answer(question) == Answer.NOT_SAID)
                .toList();
        Outcome strictest = open.stream().map(this::outcome).reduce(Outcome.ASK, Outcome::strictest);
        boolean hides = open.stream().anyMatch(question -> question.has(HealthEffect.HIDES_FIGURES));
        add(
                strictest,
                group.key(),
                "Something of this is said to apply, but not what: " + group.words()
                        + ". No plan is made before the single questions are answered; a doctor can help with them.",
                hides,
                "as strict as the strictest question of the group, our choice");
    }

    private void add(Outcome outcome, String code, String text, boolean hides, String source) {
        findings.add(new HealthFinding(
                outcome, new Caution(code, text.strip(), outcome.stops(), hides, Citation.designChoice(source))));
    }

    private Outcome outcome(HealthQuestion question) {
        Outcomes outcomes = question.afterYes().outcomes();
        if (change.loses()) {
            return outcomes.lose();
        }
        return change.gains() ? outcomes.gain() : outcomes.hold();
    }
}
