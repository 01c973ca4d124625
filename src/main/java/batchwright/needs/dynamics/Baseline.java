package batchwright.needs.dynamics;

import static batchwright.needs.dynamics.Hall2011Parameters.DIGESTION;
import static batchwright.needs.dynamics.Hall2011Parameters.GLYCOGEN_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.UPKEEP_KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.UPKEEP_KJ_PER_KG_LEAN;
import static batchwright.needs.dynamics.Hall2011Parameters.WET_PER_DRY_GLYCOGEN;

import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * A body that holds its weight, before anything changes: what {@link Hall2011} starts from.
 *
 * <p>delta = [(1 - beta_TEF) PAL - 1] R / W, and K = EI_b - gamma_F F - gamma_L L - delta W, so that the body burns just what it
 * eats; R resting energy, EI_b total energy [kJ/d], W weight, F fat, L lean tissue [kg].
 *
 * <p>Source: web appendix of Hall et al. 2011, from memory, not seen.
 *
 * <p>Departures: resting and total energy are the program's own, not always those of Mifflin et al., so that who eats the total holds
 * the weight. Below PAL 1.11 the formula gives less activity than none; none is taken. L holds the extracellular fluid, which the
 * paper estimates and takes off: K takes up the difference, so that no result changes.
 *
 * @param start the body on day 0
 * @param intakeKj EI_b, what holds the weight [kJ/d]
 * @param activityKj delta, activity per weight [kJ/kg/d]
 * @param constantKj K, what the body burns whatever its mass [kJ/d]
 */
record Baseline(BodyState start, double intakeKj, double activityKj, double constantKj) {
    /**
     * @param fat body fat, less than the weight
     * @param total energy a day that holds the weight
     * @param pal total / resting energy
     */
    static Baseline of(Mass weight, Mass fat, Energy total, double pal) {
        double tissue = weight.kg() - fat.kg() - WET_PER_DRY_GLYCOGEN * GLYCOGEN_KG;
        double intake = total.kilojoules();
        double activity = Math.max(0, ((1 - DIGESTION) * pal - 1) * intake / pal / weight.kg());
        double constant =
                intake - UPKEEP_KJ_PER_KG_FAT * fat.kg() - UPKEEP_KJ_PER_KG_LEAN * tissue - activity * weight.kg();
        return new Baseline(new BodyState(fat.kg(), tissue, GLYCOGEN_KG, 0, 0), intake, activity, constant);
    }

    /** What a body burns apart from digestion, adaptation and building [kJ/d]. */
    double upkeepKj(BodyState now) {
        return constantKj
                + UPKEEP_KJ_PER_KG_FAT * now.fatKg()
                + UPKEEP_KJ_PER_KG_LEAN * now.tissueKg()
                + activityKj * now.weightKg();
    }
}
