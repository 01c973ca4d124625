package batchwright.needs.goal;

import batchwright.needs.evidence.Words;
import batchwright.person.Body;
import batchwright.quantity.Mass;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What 1 kg of a goal stands for by body composition [kcal/kg].
 *
 * @param kcal with body fat as it is known
 * @param least with body fat lower by its error
 * @param most with body fat higher by that error
 */
public record KcalPerKg(double kcal, double least, double most) {
    /** From this difference to the rule on the figure is mentioned (choice). */
    private static final double WORTH_SAYING = 0.10;
    /** Nobody has less fat than that; it keeps an estimate with its error above nothing [kg]. */
    private static final double LEAST_FAT_KG = 0.5;

    /**
     * Empty when nothing is known of body fat.
     *
     * @param changeKg how much weight is to change in all; 0 when that is not said
     */
    static Optional<KcalPerKg> of(Body body, double changeKg) {
        ToDoubleFunction<Mass> perKg =
                fat -> changeKg == 0 ? EnergyPerKg.byComposition(fat) : EnergyPerKg.byComposition(fat, changeKg);
        double error = body.fatErrorPoints().orElse(0);
        return body.bodyFat()
                .map(fat -> new KcalPerKg(
                        perKg.applyAsDouble(fatMass(body, fat.percent())),
                        perKg.applyAsDouble(fatMass(body, fat.percent() - error)),
                        perKg.applyAsDouble(fatMass(body, fat.percent() + error))));
    }

    private static Mass fatMass(Body body, double percent) {
        return new Mass(Math.max(LEAST_FAT_KG, percent / 100 * body.weight().kg()));
    }

    /** Whether it is far enough from the rule of 7700 to be worth a word. */
    public boolean differs() {
        return Math.abs(kcal / EnergyPerKg.RULE_KCAL - 1) > WORTH_SAYING;
    }

    public boolean isUnderTheRule() {
        return kcal < EnergyPerKg.RULE_KCAL;
    }

    /** Such as: 5550 kcal, or 5550 kcal (5010 to 6020 with the error of body fat). */
    String says() {
        String range = least == most
                ? ""
                : " (" + Words.tens(least) + " to " + Words.tens(most) + " with the error of body fat)";
        return Words.tens(kcal) + " kcal" + range;
    }
}
