package batchwright.needs.goal;

import batchwright.person.Body;
import batchwright.person.Goal;

/**
 * A goal in both of its units, by the rule of {@link EnergyPerKg}; gain is positive, loss negative.
 *
 * @param kcalADay surplus or deficit
 * @param kgAWeek change of weight
 * @param percentAWeek the same as per cent of body weight
 */
public record WeeklyChange(double kcalADay, double kgAWeek, double percentAWeek) {
    private static final double DAYS_A_WEEK = 7;
    private static final double PER_CENT = 100;

    public static WeeklyChange of(Goal goal, Body body) {
        double weight = body.weight().kg();
        double kg = goal.match(new Goal.Cases<Double>() {
            @Override
            public Double percentAWeek(Goal.PercentAWeek goal) {
                return goal.percent() / PER_CENT * weight;
            }

            @Override
            public Double kgAWeek(Goal.KgAWeek goal) {
                return goal.kg();
            }

            @Override
            public Double energyADay(Goal.EnergyADay goal) {
                return kgAWeekOf(goal.kcal());
            }

            @Override
            public Double reachWeight(Goal.ReachWeight goal) {
                return (goal.weight().kg() - weight) / goal.weeks();
            }
        });
        return new WeeklyChange(kcalADayOf(kg, EnergyPerKg.RULE_KCAL), kg, kg / weight * PER_CENT);
    }

    /** Energy a day that changes weight so fast. */
    public static double kcalADayOf(double kgAWeek, double kcalPerKg) {
        return kgAWeek * kcalPerKg / DAYS_A_WEEK;
    }

    /** The same the other way round, by the rule of thumb. */
    public static double kgAWeekOf(double kcalADay) {
        return kcalADay * DAYS_A_WEEK / EnergyPerKg.RULE_KCAL;
    }

    public boolean loses() {
        return kgAWeek < 0;
    }

    public boolean gains() {
        return kgAWeek > 0;
    }
}
