package batchwright.needs.safety;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Eater;
import batchwright.person.Outcome;
import batchwright.person.Sex;
import java.util.List;

/**
 * What becomes of a goal for one reason, and why.
 *
 * @param outcome after the eater's answers; never {@link Outcome#PLAN}
 */
public record Decision(Eater eater, Outcome outcome, DecisionReason reason, Citation source) {
    private static final String REFUSED =
            " So no plan is made for this goal; a doctor or dietitian can look at it with you.";
    private static final double PER_CENT = 100;

    /** With the answer that an ask waits for. */
    static Decision answered(Eater eater, Outcome outcome, DecisionReason reason, Citation source) {
        if (outcome != Outcome.ASK) {
            return new Decision(eater, outcome, reason, source);
        }
        Outcome after = switch (question(reason).reply(eater)) {
            case GOOD -> Outcome.WARN;
            case OPEN -> Outcome.ASK;
            case BAD -> Outcome.REFUSE;
        };
        return new Decision(eater, after, reason, source);
    }

    /** For people. */
    public String says() {
        String text = reason.says()
                .replace("{bmi}", Numerals.oneDecimal(eater.body().bmi()))
                .replace("{years}", Numerals.whole(Math.floor(eater.body().ageYears())))
                .replace("{harms}", Harms.of(eater.body()))
                .replace("{periods}", eater.body().sex() == Sex.FEMALE ? ", and stop when periods stay away" : "")
                .replace(
                        "{fat}",
                        eater.body()
                                .bodyFat()
                                .map(fat -> Numerals.plain(fat.fraction() * PER_CENT))
                                .orElse("?"));
        return switch (outcome) {
            case PLAN, WARN -> text;
            case ASK ->
                text + " No plan yet: one thing more has to be known. "
                        + question(reason).asks();
            case REFUSE -> reason.hides() ? text : text + REFUSED;
        };
    }

    /** Keys of a profile that may answer; empty unless it is an ask. */
    public List<String> asks() {
        return outcome == Outcome.ASK ? question(reason).keys() : List.of();
    }

    private static Question question(DecisionReason reason) {
        return reason.question()
                .orElseThrow(() -> new IllegalStateException(reason.code() + " of reasons.csv has no question."));
    }
}
