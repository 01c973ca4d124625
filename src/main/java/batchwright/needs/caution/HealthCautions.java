package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Health;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions that follow from who the eater is, before any goal is looked at. Those that stop planning send the eater to someone
 * who can decide.
 */
public final class HealthCautions {
    private static final double ADULT_YEARS = 18;
    private static final double REFEEDING_BMI = 16;
    private static final double REFERRAL_BMI = 40;

    private static final Citation CLINICAL =
            Citation.designChoice("stop where general clinical guidance asks for a clinician");

    private HealthCautions() {}

    public static List<Caution> of(Eater eater) {
        List<Caution> cautions = new ArrayList<>();
        addBody(cautions, eater.body());
        addAnswers(cautions, eater.health());
        addNotSaid(cautions, eater);
        return cautions;
    }

    private static void addBody(List<Caution> cautions, Body body) {
        if (body.ageYears() < ADULT_YEARS) {
            cautions.add(Caution.stop(
                    "under_18",
                    "The equations used here were made for adults; a growing body needs something else. No plan is made under 18"
                            + " years: a doctor or dietitian can help.",
                    Citation.designChoice("the equations are for adults; the NASEM 2023 set for adults starts at 19")));
        }
        if (Words.below(body.bmi(), REFEEDING_BMI)) {
            cautions.add(Caution.stop(
                    "refeeding_risk",
                    "A BMI of " + Words.oneDecimal(body.bmi())
                            + " is very low. Eating much more all at once can be dangerous at"
                            + " such a weight, so no plan is made. Please see a doctor soon; they can start this safely.",
                    new Citation("NICE CG32, refeeding risk: BMI below 16; the stop is a choice of this program")));
        }
        if (!Words.below(body.bmi(), REFERRAL_BMI)) {
            cautions.add(Caution.warn(
                    "bmi_40_or_more",
                    "At a BMI of 40 or more a doctor can offer more help than a plan of meals; do ask before a change of diet.",
                    Citation.designChoice("refer at WHO obesity class III")));
        }
    }

    private static void addAnswers(List<Caution> cautions, Health health) {
        if (health.pregnantOrBreastfeeding() == Answer.YES) {
            cautions.add(Caution.stop(
                    "pregnant_or_breastfeeding",
                    "Pregnancy and breastfeeding change what a body needs, and this program does not plan for them. Your midwife,"
                            + " doctor or dietitian can.",
                    CLINICAL));
        }
        if (health.eatingDisorder() == Answer.YES) {
            cautions.add(Caution.stop(
                    "eating_disorder",
                    "Eating by numbers can do harm with an eating disorder, now or in the past, so no plan is made. Please talk to"
                            + " your doctor or an eating-disorder service: they can plan with you.",
                    CLINICAL));
        }
        if (health.kidneyDisease() == Answer.YES) {
            cautions.add(Caution.stop(
                    "kidney_disease",
                    "The protein planned here can be too much for kidneys that are ill, so no plan is made. Ask your doctor or"
                            + " renal dietitian how much protein is right for you.",
                    CLINICAL));
        }
    }

    private static void addNotSaid(List<Caution> cautions, Eater eater) {
        Health health = eater.health();
        List<String> open = new ArrayList<>();
        if (health.pregnantOrBreastfeeding() == Answer.NOT_SAID && eater.body().sex() == Sex.FEMALE) {
            open.add("pregnancy or breastfeeding");
        }
        if (health.eatingDisorder() == Answer.NOT_SAID) {
            open.add("an eating disorder");
        }
        if (health.kidneyDisease() == Answer.NOT_SAID) {
            open.add("kidney disease");
        }
        if (health.diabetesMedicine() == Answer.NOT_SAID) {
            open.add("medicine for diabetes");
        }
        if (!open.isEmpty()) {
            cautions.add(Caution.warn(
                    "health_not_said",
                    "The profile does not say whether these apply: " + String.join(", ", open)
                            + ". If one does, see a doctor or dietitian before you follow this.",
                    CLINICAL));
        }
    }
}
