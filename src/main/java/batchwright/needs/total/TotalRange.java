package batchwright.needs.total;

import batchwright.needs.evidence.Estimate;
import batchwright.quantity.Energy;

/**
 * Where total energy most likely lies. Total = resting energy x PAL; the error of the first and the doubt about the second are
 * taken as independent and added as squares, on each side by itself, because the band of a PAL need not be even.
 *
 * <p>Seven or eight people in ten have a resting energy within its usual error, and the ends of a PAL are those of a band: so the
 * range is no confidence interval, and some people lie outside.
 */
public record TotalRange(Energy least, Energy most) {
    public static TotalRange of(Estimate resting, double pal, PalEvidence evidence) {
        double restingKcal = resting.perDay().kcal();
        double total = restingKcal * pal;
        double byResting = resting.errorKcal() * pal;
        double below = Math.hypot(byResting, restingKcal * (pal - evidence.leastPal()));
        double above = Math.hypot(byResting, restingKcal * (evidence.mostPal() - pal));
        return new TotalRange(new Energy(total - below), new Energy(total + above));
    }
}
