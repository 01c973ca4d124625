package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.safety.Harms;
import batchwright.needs.safety.SafetyFigure;
import batchwright.needs.target.EnergyAvailability;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Cautions that follow from how little the target holds. */
final class IntakeCautions {
    /** Up to here vitamins and minerals are hard to get. */
    private static final double LOW_KCAL_FEMALE = 1500;

    private static final double LOW_KCAL_MALE = 1600;

    private final GoalFinding goal;
    private final Body body;
    private final int aimKcal;
    private final List<Caution> cautions = new ArrayList<>();

    private IntakeCautions(GoalFinding goal, int aimKcal) {
        this.goal = goal;
        this.body = goal.eater().body();
        this.aimKcal = aimKcal;
    }

    /** @param when what is said of the day that would do */
    static List<Caution> of(GoalFinding goal, int aimKcal, Function<GoalFinding, String> when) {
        var check = new IntakeCautions(goal, aimKcal);
        check.veryLow();
        check.floor(when);
        check.availability();
        check.belowResting();
        return check.cautions;
    }

    private void veryLow() {
        if (aimKcal < SafetyFigure.INTAKE_LEAST.value()) {
            cautions.add(Caution.stop(
                    "very_low_energy",
                    "Less than 800 kcal a day is for clinics only: it needs a doctor who watches over it, and gallstones are its"
                            + " commonest harm.",
                    SafetyFigure.INTAKE_LEAST.source()));
        }
    }

    private void floor(Function<GoalFinding, String> when) {
        boolean male = body.sex() == Sex.MALE;
        SafetyFigure floor = male ? SafetyFigure.INTAKE_LEAST_LOSS_MALE : SafetyFigure.INTAKE_LEAST_LOSS_FEMALE;
        if (aimKcal < floor.value()) {
            boolean loses = goal.change().loses();
            cautions.add(new Caution(
                    "intake_below_floor",
                    "Under " + Numerals.whole(floor.value())
                            + " kcal a day it is hard to get all vitamins and minerals from food"
                            + (loses
                                    ? ", and this goal would take less, so no plan is made."
                                            + (goal.reach().isPresent() ? when.apply(goal) : " Choose a slower goal.")
                                            + " Or ask a doctor or dietitian."
                                    : ". This comes to " + aimKcal
                                            + ": look at what the plan says of them, and ask a doctor or dietitian."),
                    loses,
                    floor.source()));
        } else if (aimKcal <= (male ? LOW_KCAL_MALE : LOW_KCAL_FEMALE)) {
            cautions.add(Caution.warn(
                    "low_energy",
                    "This comes to " + aimKcal
                            + " kcal a day, so little that a plan may fall short of some vitamins and minerals: look at what it says"
                            + " of them, and ask a doctor or dietitian when you eat so little for more than some weeks.",
                    Citation.designChoice(
                            "set by NHLBI: low-calorie diets, 1000-1200 kcal for most women, 1200-1600 for most men")));
        }
    }

    private void availability() {
        EnergyAvailability.of(goal.eater(), goal.total(), new Energy(aimKcal)).ifPresent(available -> {
            if (Numerals.below(available.kcalPerKg(), SafetyFigure.ENERGY_AVAILABILITY_LOW.value())) {
                cautions.add(new Caution(
                        "low_energy_availability",
                        "This leaves " + available.says() + byWhichFat()
                                + ". Below 30 can harm " + Harms.of(body) + "; below 25 no loss is planned."
                                + " A sports doctor or dietitian can help.",
                        goal.change().loses()
                                && Numerals.below(
                                        available.kcalPerKg(), SafetyFigure.ENERGY_AVAILABILITY_TOO_LOW.value()),
                        EnergyAvailability.SOURCE));
            }
        });
    }

    /** Not of a loss that is refused: the refusal says more. */
    private void belowResting() {
        double resting = goal.total().kcal() / goal.eater().activity().pal();
        if (Numerals.below(aimKcal, resting) && cautions.stream().noneMatch(Caution::stopsPlanning)) {
            cautions.add(Caution.warn(
                    "aim_below_resting",
                    "The aim of " + aimKcal + " kcal is less than the " + Numerals.whole(resting)
                            + " kcal that this body burns at rest. Keep to it for some weeks only, and tell a doctor or dietitian"
                            + " when you feel cold, faint or very tired.",
                    Citation.designChoice("no guideline names this limit; it is a sign of a large deficit")));
        }
    }

    private String byWhichFat() {
        boolean measured = body.fat().filter(BodyFat.Measured.class::isInstance).isPresent();
        return measured ? "" : "; body fat is an estimate";
    }
}
