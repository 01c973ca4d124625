package batchwright.person;

import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.Optional;

/**
 * A body as measured.
 *
 * @param ageYears whole or decimal years
 * @param bodyFat fat / body weight, when known
 */
public record Body(Sex sex, double ageYears, Mass weight, Length height, Optional<Share> bodyFat) {
    /** Body mass index [kg/m2]. */
    public double bmi() {
        return weight.kg() / (height.metres() * height.metres());
    }

    /** Fat-free mass, when body fat is known. */
    public Optional<Mass> fatFreeMass() {
        return bodyFat.map(fat -> new Mass(weight.kg() * (1 - fat.fraction())));
    }
}
