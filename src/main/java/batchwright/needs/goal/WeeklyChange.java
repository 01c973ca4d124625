package batchwright.needs.goal;

import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import java.util.Optional;

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
    /** From this difference on the figure by body composition is mentioned. */
    private static final double WORTH_SAYING = 0.10;

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
                return goal.kcal() * DAYS_A_WEEK / EnergyPerKg.RULE_KCAL;
            }
        });
        return new WeeklyChange(kcalADay(kg), kg, kg / weight * PER_CENT);
    }

    private static double kcalADay(double kgAWeek) {
        return kgAWeek * EnergyPerKg.RULE_KCAL / DAYS_A_WEEK;
    }

    public boolean loses() {
        return kgAWeek < 0;
    }

    public boolean gains() {
        return kgAWeek > 0;
    }

    /** In words, with the figure by body composition where body fat is known and it differs. */
    public String says(Body body) {
        if (!loses() && !gains()) {
            return "hold the weight";
        }
        String change = Words.signed(kcalADay) + " kcal a day, to " + (gains() ? "gain" : "lose") + " about "
                + Words.twoDecimals(Math.abs(kgAWeek)) + " kg (" + Words.twoDecimals(Math.abs(percentAWeek))
                + " %) a week at " + Words.whole(EnergyPerKg.RULE_KCAL) + " kcal per kg";
        return change + byComposition(body).map(text -> "; " + text).orElse("");
    }

    private static Optional<String> byComposition(Body body) {
        return fatMass(body)
                .map(EnergyPerKg::byComposition)
                .filter(kcal -> Math.abs(kcal / EnergyPerKg.RULE_KCAL - 1) > WORTH_SAYING)
                .map(kcal -> "with this body fat 1 kg may stand for about " + Words.tens(kcal)
                        + " kcal, so weight may change " + (kcal < EnergyPerKg.RULE_KCAL ? "faster" : "more slowly")
                        + " (Forbes 1987; Hall 2008)");
    }

    private static Optional<Mass> fatMass(Body body) {
        return body.bodyFat()
                .map(fat -> fat.fraction() * body.weight().kg())
                .filter(kg -> kg > 0)
                .map(Mass::new);
    }
}
