package batchwright.needs.weighing;

import batchwright.needs.Needs;
import batchwright.needs.dynamics.HallChow2011;
import batchwright.needs.total.TotalRange;

/**
 * What is known before any weighing.
 *
 * @param kcal a day that holds the weight, more than 0
 * @param sdKcal its standard error for one person, more than 0
 * @param body what a change of weight says about energy
 */
public record Prior(double kcal, double sdKcal, HallChow2011 body) {
    public Prior {
        if (!(kcal > 0 && sdKcal > 0)) {
            throw new IllegalArgumentException("kcal (" + kcal + ") and sdKcal (" + sdKcal + ") must be more than 0.");
        }
    }

    /** By the equation in use, with the range that needs print. */
    public static Prior of(Needs needs) {
        TotalRange range = needs.totalRange();
        return new Prior(
                needs.total().kcal(),
                (range.most().kcal() - range.least().kcal()) / (2 * KcalBand.Z),
                HallChow2011.of(
                        needs.eater().body(),
                        needs.total(),
                        needs.eater().activity().pal()));
    }

    public KcalBand band() {
        return new KcalBand(kcal, sdKcal);
    }
}
