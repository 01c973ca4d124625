package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.dynamics.BodyState;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.stream.DoubleStream;

/**
 * How little may be eaten to lose weight: at most 1 % of weight a week over the next four weeks, at most 1000 kcal and at most 25 % less
 * than what holds the weight, and never under the usual floor. Set by Helms et al. 2014 (0.5-1 % a week) and NHLBI (500-1000 kcal a
 * day); 25 % is a choice of this program, the floor is common practice.
 */
public record LossLimit(BodyModel model, Sex sex) {
    private static final double MOST_PERCENT_A_WEEK = 1.0;
    private static final double MOST_KCAL = 1000;
    private static final double MOST_OF_TOTAL = 0.25;
    private static final double FLOOR_KCAL_FEMALE = 1200;
    private static final double FLOOR_KCAL_MALE = 1500;
    private static final double PER_CENT = 100;
    private static final double DAYS_A_WEEK = 7;

    /** Least that a loss may eat, whoever it is [kcal/d]. */
    public static double floorKcal(Sex sex) {
        return sex == Sex.MALE ? FLOOR_KCAL_MALE : FLOOR_KCAL_FEMALE;
    }

    /** The largest deficit, floor aside [kcal/d]. */
    public double mostDeficitKcal(BodyState now) {
        double holding = model.holding(now).kcal();
        return DoubleStream.of(byRateKcal(now, holding), MOST_KCAL, MOST_OF_TOTAL * holding)
                .min()
                .getAsDouble();
    }

    private double byRateKcal(BodyState now, double holding) {
        double weeks = WeeklyChange.STEP_WEEKS;
        double kg = now.weightKg() * (1 - weeks * MOST_PERCENT_A_WEEK / PER_CENT);
        return holding - model.intakeFor(kg, weeks * DAYS_A_WEEK, now).orElse(0);
    }

    /** The least intake of a body that is to lose; what holds its weight where no loss is allowed. */
    public Energy leastIntake(BodyState now) {
        double holding = model.holding(now).kcal();
        return new Energy(Math.min(holding, Math.max(floorKcal(sex), holding - mostDeficitKcal(now))));
    }
}
