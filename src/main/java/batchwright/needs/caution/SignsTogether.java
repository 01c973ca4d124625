package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Eater;
import batchwright.person.HealthEffect;
import batchwright.person.HealthQuestion;
import batchwright.person.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Answers that mean little alone and much together: two of them refuse, and hide all figures. */
final class SignsTogether {
    private static final int ENOUGH = 2;
    private static final double LOW_BMI = 18.5;

    private SignsTogether() {}

    static List<HealthFinding> of(Eater eater) {
        List<HealthFinding> findings = new ArrayList<>();
        if (themes(eater) >= ENOUGH) {
            findings.add(
                    refuse(
                            "eating_signs",
                            "Several of the answers about eating can be signs of an eating disorder. Eating by numbers can do harm then,"
                                    + " so none are shown and no plan is made. Please talk to your doctor or an eating-disorder service;"
                                    + " when you feel faint or in danger, call the emergency number where you live.",
                            "two of five themes, as SCOFF counts them (Morgan and others, BMJ, from memory); the questions are our own"));
        }
        if (refeeding(eater) >= ENOUGH) {
            findings.add(refuse(
                    "refeeding_signs",
                    "A low weight, weight lost without trying, and some medicines or much alcohol: two of these together make it"
                            + " dangerous to eat much more all at once. So no figures are shown and no plan is made. Please see a"
                            + " doctor soon; they can start this safely.",
                    "guidance of NICE on refeeding: two small signs"));
        }
        return findings;
    }

    private static HealthFinding refuse(String code, String text, String source) {
        return new HealthFinding(Outcome.REFUSE, Caution.hide(code, text, Citation.designChoice(source)));
    }

    private static long themes(Eater eater) {
        return eater.health().yes().stream()
                .filter(question -> question.has(HealthEffect.EATING_THEME))
                .count();
    }

    /** Medicines and alcohol are one sign together. */
    private static long refeeding(Eater eater) {
        List<HealthQuestion> yes = eater.health().yes();
        return Stream.of(
                        Numerals.below(eater.body().bmi(), LOW_BMI),
                        yes.stream().anyMatch(question -> question.has(HealthEffect.REFEEDING_BY_LOSS)),
                        yes.stream().anyMatch(question -> question.has(HealthEffect.REFEEDING_BY_MEDICINE)))
                .filter(sign -> sign)
                .count();
    }
}
