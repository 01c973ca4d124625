package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.safety.Reason;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.HealthQuestion;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions that follow from who the eater is, before any goal is looked at. Those that stop planning send the eater to someone
 * who can decide.
 */
public final class HealthCautions {
    private static final double OLDER_YEARS = 65;

    private HealthCautions() {}

    public static List<Caution> of(Eater eater) {
        List<Caution> cautions = new ArrayList<>();
        addAge(cautions, eater.body());
        addRefeeding(cautions, eater);
        cautions.addAll(AnswerCautions.of(eater));
        return cautions;
    }

    private static void addAge(List<Caution> cautions, Body body) {
        if (body.ageYears() >= OLDER_YEARS) {
            cautions.add(Caution.warn(
                    "age_65_or_more",
                    "From about 65 years on the equations rest on fewer people, and lost weight is muscle and bone too. Ask a"
                            + " doctor before you lose weight, and keep protein and strength training up.",
                    Citation.designChoice("older adults need protein: PROT-AGE 2013, from memory; 65 is a choice")));
        }
    }

    private static void addRefeeding(List<Caution> cautions, Eater eater) {
        if (eater.health().isYes(HealthQuestion.HARDLY_ATE)) {
            Reason reason = Reason.of("refeeding_risk");
            cautions.add(Caution.hide(
                    reason.code(),
                    reason.says(),
                    Citation.designChoice("set by the criteria of NICE for risk of refeeding, from memory")));
        }
    }
}
