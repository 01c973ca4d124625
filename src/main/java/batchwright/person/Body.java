package batchwright.person;

import batchwright.quantity.Length;
import batchwright.quantity.Mass;
import batchwright.quantity.Share;
import java.util.Optional;

/**
 * A body.
 *
 * @param ageYears whole or decimal years
 * @param fat what is known of its fat, or that an estimate is asked for; empty when nothing is said
 * @param tape its girths, when they were taken
 */
public record Body(Sex sex, double ageYears, Mass weight, Length height, Optional<BodyFat> fat, Optional<Tape> tape) {
    /** A body without girths. */
    public Body(Sex sex, double ageYears, Mass weight, Length height, Optional<BodyFat> fat) {
        this(sex, ageYears, weight, height, fat, Optional.empty());
    }

    public Body withFat(BodyFat other) {
        return new Body(sex, ageYears, weight, height, Optional.of(other), tape);
    }

    public Body withWeight(Mass other) {
        return new Body(sex, ageYears, other, height, fat, tape);
    }

    /** Body mass index [kg/m2]. */
    public double bmi() {
        return bmiAt(weight);
    }

    /** Body mass index with another weight [kg/m2]. */
    public double bmiAt(Mass other) {
        return other.kg() / (height.metres() * height.metres());
    }

    /** fat / body weight, measured or estimated. */
    public Optional<Share> bodyFat() {
        return fat.flatMap(BodyFat::share);
    }

    /** Whether body fat is known, and by more than weight, height, sex and age. */
    public boolean fatTellsMoreThanBmi() {
        return fat.filter(BodyFat::tellsMoreThanBmi).isPresent();
    }

    /** Fat-free mass, when body fat is known or estimated. */
    public Optional<Mass> fatFreeMass() {
        return bodyFat().map(share -> new Mass(weight.kg() * (1 - share.fraction())));
    }
}
