package batchwright.needs.safety;

import batchwright.needs.evidence.Citation;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.Sex;
import java.util.OptionalDouble;

/**
 * Where a loss has to end at the latest.
 *
 * @param bmi least BMI [kg/m2]
 * @param fatPercent least body fat as its method reads it [% of weight]; more where that method errs by more than the limit allows for
 */
public record SafeEnd(double bmi, double fatPercent) {
    private static final double OLDER_YEARS = 65;
    private static final double OLD_YEARS = 70;

    public static SafeEnd of(Body body) {
        return new SafeEnd(bmi(body).value(), fat(body).value() + errorNotAllowedFor(body));
    }

    public static Citation bmiSource(Body body) {
        return bmi(body).source();
    }

    public static Citation fatSource(Body body) {
        return fat(body).source();
    }

    private static SafetyFigure fat(Body body) {
        return body.sex() == Sex.MALE ? SafetyFigure.END_FAT_PERCENT_MALE : SafetyFigure.END_FAT_PERCENT_FEMALE;
    }

    /** Whether body fat is known other than by weight, height, age and sex: then limits on it count. */
    public static boolean isToldOrTaped(Body body) {
        return body.fat()
                .filter(fat ->
                        fat.tellsMoreThanBmi() || fat instanceof BodyFat.Measured || fat instanceof BodyFat.Doubted)
                .isPresent();
    }

    /** By how much the error of the method in use exceeds what limits of body fat allow for already [points]; 0 when nothing is known. */
    static double errorNotAllowedFor(Body body) {
        SafetyFigure allowed =
                body.sex() == Sex.MALE ? SafetyFigure.FAT_ERROR_ALLOWED_MALE : SafetyFigure.FAT_ERROR_ALLOWED_FEMALE;
        double error = body.fat()
                .map(SafeEnd::asSaid)
                .map(BodyFat::errorPoints)
                .orElse(OptionalDouble.empty())
                .orElse(0);
        return Math.max(0, error - allowed.value());
    }

    /** A figure that is hard to believe has the error of its method here: what is added for the doubt must not lower it. */
    private static BodyFat asSaid(BodyFat fat) {
        return fat instanceof BodyFat.Doubted doubted ? doubted.said() : fat;
    }

    private static SafetyFigure bmi(Body body) {
        if (body.ageYears() < OLDER_YEARS) {
            return SafetyFigure.END_BMI;
        }
        return body.ageYears() < OLD_YEARS ? SafetyFigure.END_BMI_FROM_65 : SafetyFigure.END_BMI_FROM_70;
    }
}
