package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.target.Targets;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Goal;
import batchwright.person.HealthQuestion;
import java.util.ArrayList;
import java.util.List;

/** Cautions that follow from the goal and from the target it leads to. */
public final class GoalCautions {
    /** How far two solved intakes may differ that mean the same. */
    private static final double SOLVED_KCAL = 0.01;

    static final double LEAST_BMI = 18.5;
    private static final double WEEKS_AHEAD = 12;
    private static final double PROTEIN_MOST_G_PER_KG = 3.5;
    private static final double PER_CENT = 100;

    private final Eater eater;
    private final Body body;
    private final GoalFinding goal;
    private final WeeklyChange change;
    private final List<Caution> cautions = new ArrayList<>();

    private GoalCautions(GoalFinding goal) {
        this.eater = goal.eater();
        this.body = eater.body();
        this.goal = goal;
        this.change = goal.change();
    }

    public static List<Caution> of(GoalFinding goal, Targets targets) {
        GoalCautions check = new GoalCautions(goal);
        check.cautions.addAll(ReachCautions.of(goal));
        if (goal.change().loses()) {
            check.lowWeight();
            check.lossTooFast();
        } else {
            check.underweight();
        }
        check.diabetesMedicine();
        if (check.cautions.stream().noneMatch(Caution::stopsPlanning)) {
            check.cautions.addAll(BandCautions.of(goal));
        }
        check.cautions.addAll(IntakeCautions.of(goal, targets.day().energyAimKcal()));
        check.proteinVeryHigh();
        return check.cautions;
    }

    /** Losing while underweight, or so much that twelve weeks of it would lead there; a goal that has an end is judged by its end. */
    private void lowWeight() {
        if (goal.reach().isPresent()) {
            return;
        }
        double later = body.bmi() * (1 + change.percentAWeek() * WEEKS_AHEAD / PER_CENT);
        if (Words.below(later, LEAST_BMI)) {
            cautions.add(Caution.stop(
                    "goal_below_bmi_18_5",
                    "The BMI is " + Words.oneDecimal(body.bmi()) + " now and after " + Words.whole(WEEKS_AHEAD)
                            + " weeks of this goal it would be under 18.5. So low a weight is bad for bones, hormones and"
                            + " defences, so no plan is made; a doctor or dietitian can look at it with you.",
                    Citation.designChoice("no loss below the WHO normal range, BMI 18.5-24.9")));
        }
    }

    private void lossTooFast() {
        double most = goal.lossLimit().mostDeficitKcal(goal.model().start());
        if (change.kcalADay() < -most - SOLVED_KCAL) {
            double kgAWeek =
                    -WeeklyChange.of(new Goal.EnergyADay(-most), goal.model()).kgAWeek();
            cautions.add(Caution.stop(
                    "loss_too_fast",
                    "This goal eats " + Words.whole(-change.kcalADay())
                            + " kcal a day less than the total. The most planned here"
                            + " is " + Words.down(most) + " kcal, about "
                            + Words.twoDecimals(Words.down(kgAWeek * PER_CENT) / PER_CENT)
                            + " kg a week at first: the least of 1 % of body weight and 1 kg a week, 1000 kcal a day (500 from 65"
                            + " years on) and a quarter of the total (more from BMI 30 on)." + saysEarliest()
                            + " Slower keeps more muscle; faster belongs in the hands of a clinician.",
                    Citation.designChoice(
                            "set by Helms et al. 2014 (0.5-1 % a week) and NHLBI (500-1000 kcal a day)")));
        }
    }

    /** The first day that a weight could be reached on; nothing where that weight is refused. */
    private String saysEarliest() {
        boolean refused = cautions.stream().anyMatch(Caution::stopsPlanning);
        return goal.earliest()
                .filter(earliest -> !refused)
                .map(earliest -> " " + earliest.says())
                .orElse("");
    }

    private void diabetesMedicine() {
        if (!eater.health().isYes(HealthQuestion.DIABETES_MEDICINE)) {
            return;
        }
        String code = HealthQuestion.DIABETES_MEDICINE.key();
        if (change.loses()) {
            cautions.add(Caution.stop(
                    code,
                    "Eating less while taking medicine for diabetes can bring blood sugar down too far, or make other trouble."
                            + " Your doctor or diabetes nurse has to set the medicine first; no plan to lose weight is made.",
                    Citation.designChoice("stop where general clinical guidance asks for a clinician")));
        } else {
            cautions.add(Caution.warn(
                    code,
                    "Medicine for diabetes is set for what you eat now. Show your doctor or diabetes nurse what changes, carbohydrate"
                            + " above all, before you follow a plan.",
                    Citation.designChoice("refer where general clinical guidance asks for a clinician")));
        }
    }

    private void underweight() {
        if (Words.below(body.bmi(), LEAST_BMI)) {
            cautions.add(Caution.warn(
                    "underweight",
                    "A BMI of " + Words.oneDecimal(body.bmi())
                            + " is below the normal range. Please see a doctor too. See one before you eat more if you drink much"
                            + " alcohol, take insulin, water tablets or drugs against acid, or were told that potassium, phosphate or"
                            + " magnesium are low: then eating much more all at once can be dangerous.",
                    new Citation("WHO: BMI below 18.5 is underweight; NICE CG32, refeeding; from memory")));
        }
    }

    private void proteinVeryHigh() {
        double asked = eater.adjustments().proteinGPerKg().orElse(0);
        if (Words.above(asked, PROTEIN_MOST_G_PER_KG)) {
            cautions.add(Caution.warn(
                    "protein_very_high",
                    "The profile asks for " + Words.plain(asked)
                            + " g of protein per kg. The highest range among the sources used"
                            + " here is 2.3-3.1 g per kg of fat-free mass; ask a doctor or dietitian before eating more.",
                    Citation.designChoice("above every range of ISSN 2017 and Helms et al. 2014")));
        }
    }
}
