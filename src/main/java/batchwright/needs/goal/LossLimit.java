package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.BodyState;
import batchwright.needs.safety.SafeChange;
import batchwright.needs.safety.SafetyFigure;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * How little may be eaten to lose weight: what {@link SafeChange} allows, its kg a week being those that the model shows for the next four
 * weeks, and never under the usual floor.
 */
public record LossLimit(BodyModel model, Body body) {
    private static final double DAYS_A_WEEK = 7;

    /** Least that a loss may eat, whoever it is [kcal/d]; common practice. */
    public static double floorKcal(Sex sex) {
        return (sex == Sex.MALE ? SafetyFigure.INTAKE_LEAST_LOSS_MALE : SafetyFigure.INTAKE_LEAST_LOSS_FEMALE).value();
    }

    /** The largest deficit, floor aside [kcal/d]. */
    public double mostDeficitKcal(BodyState now) {
        Energy holding = model.holding(now);
        SafeChange most = SafeChange.ofLoss(body.withWeight(new Mass(now.weightKg())), holding);
        double kg = now.weightKg() - WeeklyChange.STEP_WEEKS * most.kgAWeek();
        double days = WeeklyChange.STEP_WEEKS * DAYS_A_WEEK;
        double byRate = holding.kcal() - model.intakeFor(kg, days, now).orElse(0);
        return Math.min(byRate, most.kcalADay());
    }

    /** The least intake of a body that is to lose; what holds its weight where no loss is allowed. */
    public Energy leastIntake(BodyState now) {
        double holding = model.holding(now).kcal();
        return new Energy(Math.min(holding, Math.max(floorKcal(body.sex()), holding - mostDeficitKcal(now))));
    }
}
