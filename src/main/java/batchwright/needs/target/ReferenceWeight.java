package batchwright.needs.target;

import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;

/**
 * The weight that protein is counted by: up to a BMI of 25 the weight itself; above, the weight at BMI 25 and 0.33 of the rest. Published shares
 * of the rest are 0.25 and 0.40 (adjusted body weight, common practice); 0.33 between them, and that it begins at 25 without a jump, is a choice of
 * this program.
 */
public final class ReferenceWeight {
    private static final double FROM_BMI = 25;
    private static final double SHARE_ABOVE = 0.33;

    private ReferenceWeight() {}

    /** [kg] */
    public static double kg(Body body) {
        double at25 = kgAtBmi25(body);
        double above = Math.max(0, body.weight().kg() - at25);
        return body.weight().kg() - (1 - SHARE_ABOVE) * above;
    }

    /** A figure per kg of this weight, in words. */
    static String says(double gPerKg, Body body) {
        boolean adjusted = body.weight().kg() > kgAtBmi25(body);
        return Numerals.plain(gPerKg) + " g per kg"
                + (adjusted
                        ? " of " + Numerals.oneDecimal(kg(body)) + " kg (weight at BMI 25 and a third of the rest)"
                        : "");
    }

    private static double kgAtBmi25(Body body) {
        double metres = body.height().metres();
        return FROM_BMI * metres * metres;
    }
}
