package batchwright.needs.dynamics;

import static batchwright.needs.dynamics.Hall2011Parameters.ADAPTATION;
import static batchwright.needs.dynamics.Hall2011Parameters.BUILDING_KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.BUILDING_KJ_PER_KG_LEAN;
import static batchwright.needs.dynamics.Hall2011Parameters.DIGESTION;
import static batchwright.needs.dynamics.Hall2011Parameters.FORBES_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.KJ_PER_KG_LEAN;
import static batchwright.needs.dynamics.Hall2011Parameters.UPKEEP_KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.UPKEEP_KJ_PER_KG_LEAN;

import batchwright.person.Body;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;

/**
 * {@link Hall2011} made linear about one body: what a change of weight says about energy. There are two figures of energy per kg, and
 * to mix them is an error of a quarter to a third:
 *
 * <pre>
 * expenditure now             = intake - stored  dW/dt
 * intake that holds W         = intake - dynamic dW/dt
 * dynamic dW/dt = dEI - upkeep (W - W0)
 * dynamic = [eta_F + rho_F + a (eta_L + rho_L)] / [(1-beta)(1+a)],   a = C/F
 * upkeep  = [(gamma_F + a gamma_L)/(1+a) + delta] / (1-beta),   delta = [(1-beta_TEF) PAL - 1] R / W0
 * </pre>
 *
 * <p>Source: Hall KD, Chow CC. Am J Clin Nutr 2011;94:66-74; form from the published supplement of Sanghvi A et al. Am J Clin Nutr
 * 2015;102:353-358; parameters: {@link Hall2011Parameters}.
 *
 * @param storedKcalPerKg energy in 1 kg of tissue that is gained or lost
 * @param dynamicKcalPerKg the same with what it costs to build, to digest and to be used to
 * @param upkeepKcalPerKg how much more a day holds each kg more [kcal/kg/d]
 */
public record HallChow2011(double storedKcalPerKg, double dynamicKcalPerKg, double upkeepKcalPerKg) {
    /** With known body fat, or an estimate from BMI. */
    public static HallChow2011 of(Body body, Energy total, double pal) {
        return of(body.weight(), StartingFat.of(body).of(body.weight()), total, pal);
    }

    /**
     * @param total energy a day that holds the weight
     * @param pal total / resting energy
     */
    public static HallChow2011 of(Mass weight, Mass fat, Energy total, double pal) {
        double lean = FORBES_KG / fat.kg();
        double settled = 1 - DIGESTION - ADAPTATION;
        double stored = (KJ_PER_KG_FAT + lean * KJ_PER_KG_LEAN) / (1 + lean);
        double built = (BUILDING_KJ_PER_KG_FAT + lean * BUILDING_KJ_PER_KG_LEAN) / (1 + lean);
        double upkeep = (UPKEEP_KJ_PER_KG_FAT + lean * UPKEEP_KJ_PER_KG_LEAN) / (1 + lean);
        double activity = Baseline.of(weight, fat, total, pal).activityKj();
        return new HallChow2011(kcal(stored), kcal((stored + built) / settled), kcal((upkeep + activity) / settled));
    }

    /** Change of weight so many days after a lasting change of intake [kg]. */
    public double changeKg(double kcalADay, double days) {
        return kcalADay / upkeepKcalPerKg * (1 - Math.exp(-days * upkeepKcalPerKg / dynamicKcalPerKg));
    }

    /** How much of a change of intake is burnt more once the body is used to it, and not stored. */
    public double burntShare() {
        return 1 - storedKcalPerKg / dynamicKcalPerKg;
    }

    private static double kcal(double kj) {
        return Energy.ofKilojoules(kj).kcal();
    }
}
