package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Body;
import batchwright.person.Eater;
import java.util.Optional;

/**
 * Least protein in a day.
 *
 * <ul>
 *   <li>Gain: 1.62 g/kg, above which 49 trials found no further gain of fat-free mass with training, 95 % CI 1.03-2.20 (Morton RW
 *       et al. Br J Sports Med 2018;52:376-384).
 *   <li>Hold: 1.4 g/kg, the lower end of 1.4-2.0 g/kg that builds or keeps muscle in people who train (Jaeger R et al. J Int Soc
 *       Sports Nutr 2017;14:20, the ISSN position).
 *   <li>Lose, body fat measured or by tape: 2.3 g per kg of fat-free mass, the lower end of 2.3-3.1 (Helms ER et al. J Int Soc Sports Nutr
 *       2014;11:20). Otherwise 2.0 g/kg, the upper end of the ISSN range.
 * </ul>
 *
 * <p>From BMI 30 on, figures per kg of body weight count the weight at BMI 25 (common practice). A profile's own figure counts
 * the weight as it is.
 *
 * @param grams not rounded
 * @param says how it came about
 */
public record ProteinFloor(double grams, String says, Citation source) {
    private static final double GAIN_G_PER_KG = 1.62;
    private static final PerKg GAIN_CONFIDENCE = new PerKg("95 % CI", 1.03, 2.20);
    private static final double HOLD_G_PER_KG = 1.4;
    private static final double LOSE_G_PER_KG = 2.0;
    private static final PerKg ISSN_RANGE = new PerKg("published range", 1.4, 2.0);
    private static final double LOSE_G_PER_KG_FAT_FREE = 2.3;
    private static final PerKg HELMS_RANGE = new PerKg("published range", 2.3, 3.1);

    private static final double SCALED_FROM_BMI = 30;
    private static final double SCALED_TO_BMI = 25;

    private static final Citation MORTON = new Citation("Morton et al., Br J Sports Med 2018;52:376-384");
    private static final Citation ISSN = new Citation("ISSN position, J Int Soc Sports Nutr 2017;14:20");
    private static final Citation HELMS = new Citation("Helms et al., J Int Soc Sports Nutr 2014;11:20");

    /** A range that was published beside the floor [g per kg a day]. */
    private record PerKg(String name, double least, double most) {
        /** In words, with the g a day that it means. */
        String says(double kg) {
            return "; " + name + " " + Words.plain(least) + "-" + Words.plain(most) + " g per kg: "
                    + Words.up(least * kg) + "-" + Words.down(most * kg) + " g";
        }
    }

    public static ProteinFloor of(Eater eater, WeeklyChange change) {
        Body body = eater.body();
        Optional<ProteinFloor> asked = eater.adjustments().proteinGPerKg().stream()
                .mapToObj(gPerKg -> new ProteinFloor(
                        gPerKg * body.weight().kg(),
                        Words.plain(gPerKg) + " g per kg, as the profile asks",
                        new Citation("the eater's profile")))
                .findFirst();
        return asked.orElseGet(() -> published(body, change));
    }

    private static ProteinFloor published(Body body, WeeklyChange change) {
        if (change.gains()) {
            return perKg(GAIN_G_PER_KG, GAIN_CONFIDENCE, body, MORTON);
        } else if (change.loses()) {
            return body.fatFreeMass()
                    .filter(fatFree -> body.fatTellsMoreThanBmi())
                    .map(fatFree -> new ProteinFloor(
                            LOSE_G_PER_KG_FAT_FREE * fatFree.kg(),
                            Words.plain(LOSE_G_PER_KG_FAT_FREE) + " g per kg of fat-free mass"
                                    + HELMS_RANGE.says(fatFree.kg()),
                            HELMS))
                    .orElseGet(() -> perKg(LOSE_G_PER_KG, ISSN_RANGE, body, ISSN));
        }
        return perKg(HOLD_G_PER_KG, ISSN_RANGE, body, ISSN);
    }

    private static ProteinFloor perKg(double gPerKg, PerKg range, Body body, Citation source) {
        double kg = countedKg(body);
        return new ProteinFloor(gPerKg * kg, saysPerKg(gPerKg, body) + range.says(kg), source);
    }

    /** A figure per kg of the weight that protein is counted by. */
    public static String saysPerKg(double gPerKg, Body body) {
        String of = isScaled(body) ? " of the weight at BMI 25 (common practice from BMI 30 on)" : "";
        return Words.plain(gPerKg) + " g per kg" + of;
    }

    /** The weight that protein is counted by [kg]. */
    public static double countedKg(Body body) {
        double metres = body.height().metres();
        return isScaled(body) ? SCALED_TO_BMI * metres * metres : body.weight().kg();
    }

    private static boolean isScaled(Body body) {
        return body.bmi() >= SCALED_FROM_BMI;
    }
}
