package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.WeeklyChange;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Health.Answer;
import batchwright.person.HealthQuestion;
import java.util.Optional;

/**
 * Least protein in a day: the low end of {@link ProteinRange}, or what the profile asks for. The rest of the range is only said, and only to
 * those who answered that they have no kidney disease.
 *
 * <p>Where it would take more than 35 % of energy (AMDR, IOM 2005), or leave too little for the least carbohydrate beside 20 % of fat, it is
 * lowered: to 35 %, and then to what fits, but not under 1.2 g per kg. A profile's own figure counts the weight as it is and stays.
 *
 * @param grams not rounded
 * @param says how it came about
 * @param lowered whether it is less than the low end of the evidence
 */
public record ProteinFloor(double grams, String says, Citation source, boolean lowered) {
    public static final double MOST_OF_ENERGY = 0.35; // AMDR
    private static final double KCAL_PER_G = 4;
    private static final double LEAST_WHEN_LOWERED_G_PER_KG = 1.2;

    /** @param aimKcal energy of a day */
    public static ProteinFloor of(Eater eater, WeeklyChange change, int aimKcal) {
        Body body = eater.body();
        Optional<ProteinFloor> asked = eater.adjustments().proteinGPerKg().stream()
                .mapToObj(gPerKg -> new ProteinFloor(
                        gPerKg * body.weight().kg(),
                        Numerals.plain(gPerKg) + " g per kg, as the profile asks",
                        new Citation("the eater's profile"),
                        false))
                .findFirst();
        return asked.orElseGet(() -> published(eater, change, aimKcal));
    }

    private static ProteinFloor published(Eater eater, WeeklyChange change, int aimKcal) {
        ProteinRange range = ProteinRange.of(eater, change);
        double kg = ReferenceWeight.kg(eater.body());
        double wanted = range.leastGPerKg() * kg;
        double byShare = Math.min(wanted, MOST_OF_ENERGY * aimKcal / KCAL_PER_G);
        double beside = CarbohydrateFloor.proteinThatLeavesIt(eater, aimKcal);
        double grams = Math.min(byShare, Math.max(beside, LEAST_WHEN_LOWERED_G_PER_KG * kg));
        boolean lowered = Numerals.below(grams, wanted);
        String says = ReferenceWeight.says(range.leastGPerKg(), eater.body())
                + (lowered
                        ? ", lowered from " + Numerals.up(wanted)
                                + " g to 35 % of energy or to leave room for carbohydrate"
                        : more(eater, range, kg, aimKcal, grams));
        return new ProteinFloor(grams, says, range.source(), lowered);
    }

    private static String more(Eater eater, ProteinRange range, double kg, int aimKcal, double grams) {
        if (eater.health().answer(HealthQuestion.of("kidney_disease")) != Answer.NO) {
            return "; whether more may help is said once the profile answers kidney_disease";
        }
        int most = Numerals.down(Math.min(range.mostGPerKg() * kg, MOST_OF_ENERGY * aimKcal / KCAL_PER_G));
        return most <= Numerals.up(grams) ? "" : "; more helps up to " + most + " g for " + range.mostIsFor();
    }

    /** A figure per kg of the weight that protein is counted by. */
    public static String saysPerKg(double gPerKg, Body body) {
        return ReferenceWeight.says(gPerKg, body);
    }

    /** The weight that protein is counted by [kg]. */
    public static double countedKg(Body body) {
        return ReferenceWeight.kg(body);
    }
}
