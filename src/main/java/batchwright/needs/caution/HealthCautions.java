package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions that follow from who the eater is, before any goal is looked at. Those that stop planning send the eater to someone
 * who can decide.
 */
public final class HealthCautions {
    private static final double ADULT_YEARS = 18;
    private static final double OLDER_YEARS = 65;
    private static final double REFEEDING_BMI = 16;
    private static final double REFERRAL_BMI_WITH_ILLNESS = 35;
    private static final double REFERRAL_BMI = 40;

    private HealthCautions() {}

    public static List<Caution> of(Eater eater) {
        List<Caution> cautions = new ArrayList<>();
        addAge(cautions, eater.body());
        addRefeeding(cautions, eater.body());
        addHighBmi(cautions, eater.body());
        return cautions;
    }

    private static void addAge(List<Caution> cautions, Body body) {
        if (body.ageYears() < ADULT_YEARS) {
            cautions.add(Caution.hide(
                    "under_18",
                    "The equations used here were made for adults; a growing body needs something else. No figures and no plan"
                            + " under 18 years: a doctor or dietitian can help.",
                    Citation.designChoice("the equations are for adults; the NASEM 2023 set for adults starts at 19")));
        }
        if (body.ageYears() >= OLDER_YEARS) {
            cautions.add(Caution.warn(
                    "age_65_or_more",
                    "From about 65 years on the equations rest on fewer people, and lost weight is muscle and bone too. Ask a"
                            + " doctor before you lose weight, and keep protein and strength training up.",
                    Citation.designChoice("older adults need protein: PROT-AGE 2013, from memory; 65 is a choice")));
        }
    }

    private static void addRefeeding(List<Caution> cautions, Body body) {
        if (Words.below(body.bmi(), REFEEDING_BMI)) {
            cautions.add(Caution.hide(
                    "refeeding_risk",
                    "At a very low weight eating much more all at once can be dangerous. So no figures are shown and no plan is"
                            + " made. Please see a doctor soon; they can start this safely.",
                    Citation.designChoice("set by the criteria of NICE for risk of refeeding, from memory")));
        }
    }

    private static void addHighBmi(List<Caution> cautions, Body body) {
        if (!Words.below(body.bmi(), REFERRAL_BMI)) {
            cautions.add(Caution.warn(
                    "bmi_40_or_more",
                    "At a BMI of 40 or more a doctor can offer more help than a plan of meals; do ask before a change of diet.",
                    Citation.designChoice("refer at WHO obesity class III")));
        } else if (!Words.below(body.bmi(), REFERRAL_BMI_WITH_ILLNESS)) {
            cautions.add(Caution.warn(
                    "bmi_35_or_more",
                    "At a BMI of 35 or more with an illness that weight makes worse, such as diabetes or high blood pressure, a"
                            + " doctor can offer more help than a plan of meals.",
                    Citation.designChoice(
                            "refer at WHO obesity class II with illness: general guidance, from memory")));
        }
    }
}
