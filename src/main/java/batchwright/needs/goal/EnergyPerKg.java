package batchwright.needs.goal;

import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * What 1 kg of weight change stands for [kcal/kg].
 *
 * <p>The rule of thumb is 7700 kcal/kg (3500 kcal a pound: Wishnofsky 1958). It counts fat tissue only, and holds when there are
 * about 30 kg of body fat or more; leaner people change weight faster (Hall KD. What is the required energy deficit per unit
 * weight loss? Int J Obes 2008;32:573-576). By Forbes (1987) a small change is shared between fat and lean tissue as FM : 10.4,
 * FM fat mass [kg], so that 1 kg stands for (39.5 FM + 7.6 x 10.4) / (10.4 + FM) MJ. The 7.6 MJ/kg of lean tissue is from memory.
 */
public final class EnergyPerKg {
    public static final double RULE_KCAL = 7700;

    private static final double KJ_PER_KG_FAT = 39_500; // Hall 2008
    private static final double KJ_PER_KG_LEAN = 7_600; // Hall 2008, from memory
    private static final double FORBES_KG = 10.4; // Forbes 1987

    private EnergyPerKg() {}

    /** For a small change of a body with this fat mass. */
    public static double byComposition(Mass fat) {
        double kj = (KJ_PER_KG_FAT * fat.kg() + KJ_PER_KG_LEAN * FORBES_KG) / (FORBES_KG + fat.kg());
        return Energy.ofKilojoules(kj).kcal();
    }
}
