package batchwright.needs.goal;

import batchwright.person.Body;
import batchwright.quantity.Mass;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What 1 kg of a goal stands for by body composition [kcal/kg]; shown to scripts beside the rule of 7700, and nothing is planned by it.
 *
 * @param kcal with body fat as it is known
 * @param least with body fat lower by its error
 * @param most with body fat higher by that error
 */
public record KcalPerKg(double kcal, double least, double most) {
    /** Nobody has less fat than that; it keeps an estimate less its error above zero [kg]. */
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
}
