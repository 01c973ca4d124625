package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.person.Body;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.List;

/** What to know about the eater's age, whatever the goal: from some age on the equations rest on fewer people. */
public final class HealthCautions {
    private static final double OLDER_YEARS = 65;

    private HealthCautions() {}

    public static List<Caution> of(Eater eater) {
        List<Caution> cautions = new ArrayList<>();
        addAge(cautions, eater.body());
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
}
