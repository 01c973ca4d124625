package batchwright.person;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the eater changes of the targets that would follow from body and goal; empty means the published default.
 *
 * @param energyBandPercent tolerance around the energy aim [%], default 3
 * @param proteinGPerKg protein floor [g per kg body weight a day]
 * @param fibreG fibre floor [g a day]
 * @param fruitVegG fruit and vegetables floor [g a day]
 * @param carbohydrateG carbohydrate floor [g a day], fibre included
 * @param box how large a container may be
 * @param energyOnAveragePercent how far the mean of all days may miss the energy aim [%], default 0, or 1 when the weight is held
 */
public record Adjustments(
        OptionalDouble energyBandPercent,
        OptionalDouble proteinGPerKg,
        OptionalInt fibreG,
        OptionalInt fruitVegG,
        OptionalInt carbohydrateG,
        OptionalDouble energyOnAveragePercent,
        Box box) {
    public static final Adjustments NONE =
            new Adjustments(OptionalDouble.empty(), OptionalDouble.empty(), OptionalInt.empty(), OptionalInt.empty());

    /** Carbohydrate and energy on average as usual. */
    public Adjustments(
            OptionalDouble energyBandPercent, OptionalDouble proteinGPerKg, OptionalInt fibreG, OptionalInt fruitVegG) {
        this(
                energyBandPercent,
                proteinGPerKg,
                fibreG,
                fruitVegG,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                Box.USUAL);
    }

    /** @param percent tolerance around the energy aim */
    public Adjustments withEnergyBand(double percent) {
        return new Adjustments(
                OptionalDouble.of(percent),
                proteinGPerKg,
                fibreG,
                fruitVegG,
                carbohydrateG,
                energyOnAveragePercent,
                box);
    }

    /** @param gPerKg protein floor */
    public Adjustments withProtein(double gPerKg) {
        return new Adjustments(
                energyBandPercent,
                OptionalDouble.of(gPerKg),
                fibreG,
                fruitVegG,
                carbohydrateG,
                energyOnAveragePercent,
                box);
    }
}
