package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Energy;

/**
 * A goal as energy and as weight; gain is positive, loss negative.
 *
 * @param kcalADay surplus or deficit
 * @param kgAWeek change of weight as a scale shows it: the mean of the first four weeks, for a weight by a date too, whatever its average is;
 *     so the same energy is judged the same
 * @param percentAWeek the same as per cent of body weight
 */
public record WeeklyChange(double kcalADay, double kgAWeek, double percentAWeek) {
    /** A rate is planned for this long; then it needs another intake. */
    public static final int STEP_WEEKS = 4;

    private static final double DAYS_A_WEEK = 7;
    private static final double PER_CENT = 100;
    /** No intake outside these parts of the total is looked at; a goal that would need one is refused. */
    private static final double LEAST_OF_TOTAL = 0.25;

    private static final double MOST_OF_TOTAL = 4;

    /** By the model of the body. The intake of a rate is solved for the next four weeks, that of a weight by a date until that day. */
    public static WeeklyChange of(Goal goal, BodyModel model) {
        double weight = model.start().weightKg();
        return goal.match(new Goal.Cases<WeeklyChange>() {
            @Override
            public WeeklyChange percentAWeek(Goal.PercentAWeek goal) {
                return even(model, goal.percent() / PER_CENT * weight, STEP_WEEKS);
            }

            @Override
            public WeeklyChange kgAWeek(Goal.KgAWeek goal) {
                return even(model, goal.kg(), STEP_WEEKS);
            }

            @Override
            public WeeklyChange energyADay(Goal.EnergyADay goal) {
                return goal.kcal() == 0 ? of(0, 0, weight) : ofEnergy(model, goal.kcal());
            }

            @Override
            public WeeklyChange reachWeight(Goal.ReachWeight goal) {
                double average = (goal.weight().kg() - weight) / goal.weeks();
                return average == 0
                        ? of(0, 0, weight)
                        : ofEnergy(model, even(model, average, goal.weeks()).kcalADay());
            }
        });
    }

    /** The one intake that changes weight at this average rate over this many weeks. */
    private static WeeklyChange even(BodyModel model, double kgAWeek, double weeks) {
        double weight = model.start().weightKg();
        if (kgAWeek == 0) {
            return of(0, 0, weight);
        }
        double total = model.total().kcal();
        double intake = model.intakeFor(weight + weeks * kgAWeek, weeks * DAYS_A_WEEK, model.start())
                .orElse(total * (kgAWeek < 0 ? LEAST_OF_TOTAL : MOST_OF_TOTAL));
        return of(intake - total, kgAWeek, weight);
    }

    private static WeeklyChange ofEnergy(BodyModel model, double kcal) {
        double total = model.total().kcal();
        double intake = Math.min(MOST_OF_TOTAL * total, Math.max(LEAST_OF_TOTAL * total, total + kcal));
        double weight = model.start().weightKg();
        double later = model.after(STEP_WEEKS * DAYS_A_WEEK, new Energy(intake), model.start())
                .weightKg();
        return of(kcal, (later - weight) / STEP_WEEKS, weight);
    }

    /** The same goal by the rule of {@link EnergyPerKg}: for comparison only. */
    public static WeeklyChange byRule(Goal goal, Body body) {
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
                return goal.kcal() * DAYS_A_WEEK / EnergyPerKg.RULE_KCAL;
            }

            @Override
            public Double reachWeight(Goal.ReachWeight goal) {
                return (goal.weight().kg() - weight) / goal.weeks();
            }
        });
        return of(kg * EnergyPerKg.RULE_KCAL / DAYS_A_WEEK, kg, weight);
    }

    private static WeeklyChange of(double kcalADay, double kgAWeek, double weight) {
        return new WeeklyChange(kcalADay, kgAWeek, kgAWeek / weight * PER_CENT);
    }

    /** Whether it needs an intake outside those that are looked at. */
    boolean isOutOfReach(Energy total) {
        return kcalADay <= (LEAST_OF_TOTAL - 1) * total.kcal() || kcalADay >= (MOST_OF_TOTAL - 1) * total.kcal();
    }

    public boolean loses() {
        return kgAWeek < 0;
    }

    public boolean gains() {
        return kgAWeek > 0;
    }
}
