package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Eater;
import batchwright.person.Health.Answer;
import batchwright.person.HealthEffect;
import batchwright.person.HealthGroup;
import batchwright.person.HealthQuestion;
import batchwright.person.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Questions of health that were left open: not answered is not no. */
final class NotSaid {
    private static final Citation CHOICE = Citation.designChoice("not answered is not no");

    /** From here on nobody is asked about pregnancy and periods; our choice, as later pregnancies are very rare. */
    private static final double PERIODS_TO_YEARS = 55;

    private static final String PERIODS = "pregnancy_and_periods";

    private final Eater eater;

    private NotSaid(Eater eater) {
        this.eater = eater;
    }

    static List<HealthFinding> of(Eater eater, WeeklyChange change) {
        var check = new NotSaid(eater);
        List<HealthQuestion> open =
                HealthQuestion.all().stream().filter(check::isOpen).toList();
        List<HealthQuestion> first = open.stream()
                .filter(question -> question.has(HealthEffect.LOSS_WAITS_FOR_ANSWER))
                .toList();
        List<HealthFinding> findings = new ArrayList<>();
        if (change.loses() && !first.isEmpty()) {
            findings.add(new HealthFinding(Outcome.ASK, check.stop(first)));
        }
        if (!open.isEmpty()) {
            findings.add(new HealthFinding(Outcome.WARN, check.warning(open)));
        }
        return findings;
    }

    /** An unclear group has a caution of its own. */
    private boolean isOpen(HealthQuestion question) {
        boolean tooOld = question.group().key().equals(PERIODS) && eater.body().ageYears() >= PERIODS_TO_YEARS;
        return !tooOld
                && question.concerns(eater.body().sex())
                && eater.health().answer(question) == Answer.NOT_SAID
                && !eater.health().unclear().contains(question.group());
    }

    private Caution stop(List<HealthQuestion> first) {
        return Caution.stop(
                "loss_waits_for_answer",
                "No loss of weight is planned before this is answered: "
                        + first.stream().map(HealthQuestion::asks).collect(Collectors.joining(" "))
                        + " If you do not know, ask a doctor first.",
                CHOICE);
    }

    private Caution warning(List<HealthQuestion> open) {
        return Caution.warn(
                "health_not_said",
                "The profile does not say whether these apply: "
                        + open.stream()
                                .map(question -> words(question, open))
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + ". If one does, see a doctor or dietitian before you follow this.",
                CHOICE);
    }

    /** Where nothing is said about a group, only the group is named. */
    private String words(HealthQuestion question, List<HealthQuestion> open) {
        HealthGroup group = question.group();
        boolean all = group.questions().size() > 1 && open.containsAll(group.questions());
        return all ? group.label() : question.words();
    }
}
