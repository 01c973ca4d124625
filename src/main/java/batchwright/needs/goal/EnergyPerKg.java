package batchwright.needs.goal;

import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * What 1 kg of weight change stands for [kcal/kg]: a comparison. What is planned comes from the model in {@code needs.dynamics}.
 *
 * <p>The rule of thumb is 7700 kcal/kg (3500 kcal a pound: Wishnofsky 1958). It counts fat tissue only, and holds when there are
 * about 30 kg of body fat or more; leaner people change weight faster (Hall KD. What is the required energy deficit per unit
 * weight loss? Int J Obes 2008;32:573-576). By Forbes (1987) a small change is shared between fat and lean tissue as FM : 10.4,
 * FM fat mass [kg], so that 1 kg stands for (39.5 FM + 7.6 x 10.4) / (10.4 + FM) MJ. A larger change is shared as {@link Hall2007}
 * says. The 7.6 MJ/kg of lean tissue is from memory.
 */
public final class EnergyPerKg {
    public static final double RULE_KCAL = 7700;

    private static final double KJ_PER_KG_FAT = 39_500; // Hall 2008
    private static final double KJ_PER_KG_LEAN = 7_600; // Hall 2008, from memory

    private EnergyPerKg() {}

    /** For a small change of a body with this fat mass. */
    public static double byComposition(Mass fat) {
        return mix(fat.kg() / (Hall2007.FORBES_KG + fat.kg()));
    }

    /** For a change of so many kg, positive or negative but not zero, of a body with this fat mass: the mean over all of it. */
    public static double byComposition(Mass fat, double changeKg) {
        return mix(Hall2007.fatChangeKg(fat, changeKg) / changeKg);
    }

    /** @param fatShare of 1 kg of change, how much is fat */
    private static double mix(double fatShare) {
        double kj = KJ_PER_KG_FAT * fatShare + KJ_PER_KG_LEAN * (1 - fatShare);
        return Energy.ofKilojoules(kj).kcal();
    }
}
