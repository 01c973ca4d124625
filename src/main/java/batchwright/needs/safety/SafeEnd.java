package batchwright.needs.safety;

import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Mass;

/**
 * Where a loss has to end at the latest.
 *
 * @param bmi least BMI [kg/m2]
 * @param fatPercent least body fat [% of weight]
 */
public record SafeEnd(double bmi, double fatPercent) {
    private static final double OLDER_YEARS = 65;
    private static final double OLD_YEARS = 70;

    public static SafeEnd of(Body body) {
        Figure fat = body.sex() == Sex.MALE ? Figure.END_FAT_PERCENT_MALE : Figure.END_FAT_PERCENT_FEMALE;
        return new SafeEnd(bmi(body.ageYears()).value(), fat.value());
    }

    /** The least BMI at the end of a loss at this age. */
    static Figure bmi(double years) {
        if (years < OLDER_YEARS) {
            return Figure.END_BMI;
        }
        return years < OLD_YEARS ? Figure.END_BMI_FROM_65 : Figure.END_BMI_FROM_70;
    }

    /** The weight at the least BMI. */
    public Mass leastWeight(Body body) {
        double metres = body.height().metres();
        return new Mass(bmi * metres * metres);
    }
}
