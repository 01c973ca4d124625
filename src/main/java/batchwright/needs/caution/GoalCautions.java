package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.EnergyPerKg;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.target.Targets;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Eater;
import batchwright.person.Health.Answer;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Cautions that follow from the goal and from the target it leads to. */
public final class GoalCautions {
    private static final double LOSS_MOST_PERCENT_A_WEEK = 1.0;
    private static final double DEFICIT_MOST_KCAL = 1000;
    private static final double DEFICIT_MOST_OF_TOTAL = 0.25;
    static final double LEAST_BMI = 18.5;
    private static final double WEEKS_AHEAD = 12;
    private static final double FLOOR_KCAL_FEMALE = 1200;
    private static final double FLOOR_KCAL_MALE = 1500;
    private static final double PROTEIN_MOST_G_PER_KG = 3.5;
    private static final double AVAILABLE_LOW_KCAL_PER_KG = 30;
    private static final double AVAILABLE_TOO_LOW_KCAL_PER_KG = 25;
    private static final double PER_CENT = 100;

    private final Eater eater;
    private final Body body;
    private final Energy total;
    private final GoalFinding goal;
    private final WeeklyChange change;
    private final Targets targets;
    private final List<Caution> cautions = new ArrayList<>();

    private GoalCautions(GoalFinding goal, Targets targets) {
        this.eater = goal.eater();
        this.body = eater.body();
        this.total = goal.total();
        this.goal = goal;
        this.change = goal.change();
        this.targets = targets;
    }

    public static List<Caution> of(GoalFinding goal, Targets targets) {
        GoalCautions check = new GoalCautions(goal, targets);
        check.cautions.addAll(ReachCautions.of(goal));
        if (goal.change().loses()) {
            check.lowWeight();
            check.lossTooFast();
            check.diabetesMedicine();
        } else {
            check.underweight();
        }
        if (check.cautions.stream().noneMatch(Caution::stopsPlanning)) {
            check.cautions.addAll(BandCautions.of(goal));
        }
        check.intakeBelowFloor();
        check.energyAvailability();
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
        double byRate = WeeklyChange.kcalADayOf(
                LOSS_MOST_PERCENT_A_WEEK / PER_CENT * body.weight().kg(), EnergyPerKg.RULE_KCAL);
        double most = DoubleStream.of(byRate, DEFICIT_MOST_KCAL, DEFICIT_MOST_OF_TOTAL * total.kcal())
                .min()
                .getAsDouble();
        double kgAWeek = WeeklyChange.kgAWeekOf(most);
        if (Words.above(-change.kcalADay(), most)) {
            cautions.add(Caution.stop(
                    "loss_too_fast",
                    "This goal eats " + Words.whole(-change.kcalADay())
                            + " kcal a day less than the total. The most planned here"
                            + " is " + Words.down(most) + " kcal, about "
                            + Words.twoDecimals(Words.down(kgAWeek * PER_CENT) / PER_CENT)
                            + " kg a week: 1 % of body weight a week, 1000 kcal a day or 25 % of the total, whichever is least."
                            + saysWhenAtMost(kgAWeek)
                            + " Slower keeps more muscle; faster belongs in the hands of a clinician.",
                    Citation.designChoice(
                            "set by Helms et al. 2014 (0.5-1 % a week) and NHLBI (500-1000 kcal a day)")));
        }
    }

    /** The first day that a weight could be reached on; nothing where that weight is refused. */
    private String saysWhenAtMost(double kgAWeek) {
        boolean refused = cautions.stream().anyMatch(Caution::stopsPlanning);
        return goal.reach()
                .filter(reach -> !refused)
                .map(reach -> " So " + ReachCautions.saysWhen(reach, body, kgAWeek) + " at the earliest.")
                .orElse("");
    }

    private void diabetesMedicine() {
        if (eater.health().diabetesMedicine() == Answer.YES) {
            cautions.add(Caution.stop(
                    "diabetes_medicine",
                    "Eating less while taking medicine for diabetes can bring blood sugar down too far, or make other trouble."
                            + " Your doctor or diabetes nurse has to set the medicine first; no plan to lose weight is made.",
                    Citation.designChoice("stop where general clinical guidance asks for a clinician")));
        }
    }

    private void underweight() {
        if (Words.below(body.bmi(), LEAST_BMI)) {
            cautions.add(Caution.warn(
                    "underweight",
                    "A BMI of " + Words.oneDecimal(body.bmi())
                            + " is below the normal range. Please see a doctor too, above all if"
                            + " weight was lost without trying.",
                    new Citation("WHO: BMI below 18.5 is underweight")));
        }
    }

    private void intakeBelowFloor() {
        double floor = body.sex() == Sex.MALE ? FLOOR_KCAL_MALE : FLOOR_KCAL_FEMALE;
        if (targets.day().energyAimKcal() < floor) {
            cautions.add(Caution.stop(
                    "intake_below_floor",
                    "This comes to " + targets.day().energyAimKcal() + " kcal a day. Under " + Words.whole(floor)
                            + " kcal it is hard to get all vitamins and minerals from food, so no plan is made. Choose a slower goal, or"
                            + " ask a doctor or dietitian.",
                    Citation.commonPractice("at least 1200 kcal a day for women and 1500 for men")));
        }
    }

    /**
     * Energy left for the body per kg of fat-free mass. What training takes is not known, so nothing is taken off: the true
     * figure is lower, and this caution comes late rather than early.
     */
    private void energyAvailability() {
        body.fatFreeMass().ifPresent(fatFree -> {
            double available = targets.day().energyAimKcal() / fatFree.kg();
            if (Words.below(available, AVAILABLE_LOW_KCAL_PER_KG)) {
                cautions.add(
                        new Caution(
                                "low_energy_availability",
                                "This leaves " + Words.oneDecimal(available)
                                        + " kcal a day for each kg of fat-free mass" + byWhichFat()
                                        + ", before training takes its share. Below 30 can harm"
                                        + " hormones, bones and the menstrual cycle; below 25 no plan is made. A sports doctor or dietitian can help.",
                                Words.below(available, AVAILABLE_TOO_LOW_KCAL_PER_KG),
                                new Citation(
                                        "Loucks and Thuma 2003, IOC 2018: 30 kcal/kg; the stop at 25 is a choice of this program")));
            }
        });
    }

    private String byWhichFat() {
        boolean measured = body.fat().filter(BodyFat.Measured.class::isInstance).isPresent();
        return measured ? "" : " (by an estimate of body fat)";
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
