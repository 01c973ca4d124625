package batchwright.needs.bodyfat;

import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.BodyFat;
import batchwright.person.FatMethod;
import batchwright.person.Sex;

/**
 * Whether a told body fat can be that of this body: by the fat-free mass index, FFMI = weight x (1 - fat) / height^2 [kg/m2], and by how far it
 * lies from the estimate from BMI.
 *
 * <p>Doubtful above an FFMI of 28.3 (men) or 23.9 (women), the 97.5th percentiles of college athletes (International Journal of Exercise
 * Science 11(6):17; PubMed 31238804); 25 is no limit: 26 % of footballers lie above it, the largest seen is 31.7 (PMC5438288). All other bounds
 * are choices of this program: doubtful under 13.5 or 11; impossible outside 11 to 33 or 9.5 to 28.5, and outside 3-60 % or 8-65 % of fat. Upper
 * bounds rise by 0.25 for each BMI point above 30, because part of much weight is lean. Doubtful, too, when it lies more than 2.5 standard
 * deviations from the estimate from BMI, whose own is taken as 4.5 points: a choice. What is measured much better than that is not judged by
 * it, because BMI is wrong for muscular people.
 *
 * @param why in words, to stand behind "because"; empty when plausible
 * @param byBmi the estimate from BMI
 */
public record FatPlausibility(Verdict verdict, String why, BodyFatEstimate byBmi) {
    /** How far a figure can be believed. */
    public enum Verdict {
        PLAUSIBLE,
        DOUBTFUL,
        IMPOSSIBLE
    }

    /** Bounds of one sex: FFMI [kg/m2] and fat [% of body weight]. */
    private record Bounds(
            double ffmiImpossibleBelow,
            double ffmiDoubtBelow,
            double ffmiDoubtAbove,
            double ffmiImpossibleAbove,
            double fatLeast,
            double fatMost) {
        static Bounds of(Sex sex) {
            return sex == Sex.MALE ? MEN : WOMEN;
        }
    }

    private static final Bounds MEN = new Bounds(11, 13.5, 28.3, 33, 3, 60);
    private static final Bounds WOMEN = new Bounds(9.5, 11, 23.9, 28.5, 8, 65);
    private static final double RISES_FROM_BMI = 30;
    private static final double RISE_PER_BMI = 0.25;
    private static final double SD_BY_BMI = 4.5; // points
    private static final double FAR = 2.5; // standard deviations
    private static final double MUCH_BETTER = 0.6; // of that standard deviation

    /** @param told by the eater */
    public static FatPlausibility of(Body body, BodyFat.Measured told) {
        BodyFatEstimate byBmi = Deurenberg1991.of(body);
        double percent = told.fat().percent();
        double ffmi = body.bmi() * (1 - told.fat().fraction());
        double rise = RISE_PER_BMI * Math.max(0, body.bmi() - RISES_FROM_BMI);
        var bounds = Bounds.of(body.sex());
        if (isOutside(ffmi, bounds.ffmiImpossibleBelow, bounds.ffmiImpossibleAbove + rise)
                || isOutside(percent, bounds.fatLeast, bounds.fatMost)) {
            return new FatPlausibility(Verdict.IMPOSSIBLE, saysIndex(ffmi), byBmi);
        }
        if (isOutside(ffmi, bounds.ffmiDoubtBelow, bounds.ffmiDoubtAbove + rise)) {
            return new FatPlausibility(Verdict.DOUBTFUL, saysIndex(ffmi), byBmi);
        }
        return isFar(percent, told.method(), byBmi)
                ? new FatPlausibility(Verdict.DOUBTFUL, "it lies far from it", byBmi)
                : new FatPlausibility(Verdict.PLAUSIBLE, "", byBmi);
    }

    public boolean isPlausible() {
        return verdict == Verdict.PLAUSIBLE;
    }

    /** The figure with an error that reaches to the estimate from BMI. */
    BodyFat doubted(BodyFat.Measured told) {
        double away = Math.abs(told.fat().percent() - byBmi.fat().percent());
        return new BodyFat.Doubted(told, Math.max(told.method().errorPoints(), away));
    }

    private static boolean isFar(double percent, FatMethod method, BodyFatEstimate byBmi) {
        double sd = Math.hypot(method.errorPoints(), SD_BY_BMI);
        boolean better = method.errorPoints() <= SD_BY_BMI * MUCH_BETTER;
        return !better && Numerals.above(Math.abs(percent - byBmi.fat().percent()), FAR * sd);
    }

    private static boolean isOutside(double value, double least, double most) {
        return Numerals.below(value, least) || Numerals.above(value, most);
    }

    private static String saysIndex(double ffmi) {
        return "it would mean " + Numerals.oneDecimal(ffmi) + " kg of fat-free mass for each square metre of height";
    }
}
