package batchwright.needs.dynamics;

import static batchwright.needs.dynamics.Hall2011Parameters.ADAPTATION;
import static batchwright.needs.dynamics.Hall2011Parameters.ADAPTATION_DAYS;
import static batchwright.needs.dynamics.Hall2011Parameters.BUILDING_KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.BUILDING_KJ_PER_KG_LEAN;
import static batchwright.needs.dynamics.Hall2011Parameters.CARBOHYDRATE;
import static batchwright.needs.dynamics.Hall2011Parameters.DIGESTION;
import static batchwright.needs.dynamics.Hall2011Parameters.FORBES_ENERGY_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.GLYCOGEN_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.KJ_PER_KG_FAT;
import static batchwright.needs.dynamics.Hall2011Parameters.KJ_PER_KG_GLYCOGEN;
import static batchwright.needs.dynamics.Hall2011Parameters.KJ_PER_KG_LEAN;
import static batchwright.needs.dynamics.Hall2011Parameters.SODIUM_LOST_MG_PER_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.SODIUM_LOST_WITHOUT_CARBOHYDRATE_MG;
import static batchwright.needs.dynamics.Hall2011Parameters.SODIUM_MG_PER_KG;

import batchwright.quantity.Energy;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * How the body of an adult changes when it eats more or less than what holds its weight. Energy [kJ], mass [kg], time [d].
 *
 * <pre>
 * rho_G dG/dt    = CI - k_G G^2                                   glycogen; k_G = CI_b / G_init^2
 * [Na] dECF/dt   = - xi_Na (ECF - ECF_init) - xi_CI (1 - CI/CI_b)  extracellular fluid
 * tau_AT dAT/dt  = beta_AT dEI - AT                               adaptive thermogenesis; dEI = EI - EI_b
 * rho_F dF/dt    = (1-p) (EI - EE - rho_G dG/dt)                  fat
 * rho_L dL/dt    = p (EI - EE - rho_G dG/dt)                      lean tissue; p = C/(C+F), C = 10.4 rho_L/rho_F (Forbes 1987)
 * EE = K + gamma_F F + gamma_L L + delta BW + beta_TEF dEI + AT + eta_L dL/dt + eta_F dF/dt
 * BW = F + L + ECF + 3.7 G
 * </pre>
 *
 * <p>EI intake, EE expenditure, CI carbohydrate eaten [kJ/d]; the index b means before the change. Tissue being built costs energy,
 * so EE stands on both sides; put in, it is EE = [K + ... + AT + (EI - rho_G dG/dt) q] / (1 + q) with q = p eta_L/rho_L + (1-p)
 * eta_F/rho_F.
 *
 * <p>A model for groups of adults. Against CALERIE 2 (two years of eating less) its mean error was -0.47 kg, 95 % CI -0.92 to
 * -0.02 (Guo, Brager and Hall 2018).
 *
 * <p>Source: Hall KD, Sacks G, Chandramohan D, Chow CC, Wang YC, Gortmaker SL, Swinburn BA. Quantification of the effect of energy
 * imbalance on bodyweight. Lancet 2011;378:826-837, web appendix. Equations and parameters partly from memory:
 * {@link Hall2011Parameters} says which.
 *
 * <p>Departures: salt eaten does not change, and carbohydrate is the same share of energy before and after; activity per kg stays
 * as it is; baseline fat and energy are given from outside ({@link Baseline}).
 */
final class Hall2011 implements FirstOrderDifferentialEquations {
    private final Baseline baseline;
    private final double intake;

    /** @param intake eaten each day from day 0 on */
    Hall2011(Baseline baseline, Energy intake) {
        this.baseline = baseline;
        this.intake = intake.kilojoules();
    }

    @Override
    public int getDimension() {
        return BodyState.SIZE;
    }

    @Override
    public void computeDerivatives(double day, double[] y, double[] yDot) {
        BodyState body = BodyState.of(y);
        double toGlycogen = toGlycogen(body);
        double leanShare = FORBES_ENERGY_KG / (FORBES_ENERGY_KG + body.fatKg());
        double toTissue = intake - toGlycogen - expenditure(body, toGlycogen, leanShare);
        yDot[0] = (1 - leanShare) * toTissue / KJ_PER_KG_FAT;
        yDot[1] = leanShare * toTissue / KJ_PER_KG_LEAN;
        yDot[2] = toGlycogen / KJ_PER_KG_GLYCOGEN;
        yDot[3] = fluid(body);
        yDot[4] = (ADAPTATION * change() - body.adaptationKj()) / ADAPTATION_DAYS;
    }

    /** EI - EI_b [kJ/d]. */
    private double change() {
        return intake - baseline.intakeKj();
    }

    /** Energy that goes into glycogen [kJ/d]. */
    private double toGlycogen(BodyState body) {
        double filled = body.glycogenKg() / GLYCOGEN_KG;
        return CARBOHYDRATE * (intake - baseline.intakeKj() * filled * filled);
    }

    /** EE [kJ/d], in its form without dF/dt and dL/dt. */
    private double expenditure(BodyState body, double toGlycogen, double leanShare) {
        double building = leanShare * BUILDING_KJ_PER_KG_LEAN / KJ_PER_KG_LEAN
                + (1 - leanShare) * BUILDING_KJ_PER_KG_FAT / KJ_PER_KG_FAT;
        double others = DIGESTION * change() + body.adaptationKj();
        return (baseline.upkeepKj(body) + others + (intake - toGlycogen) * building) / (1 + building);
    }

    /** Change of extracellular fluid [kg/d]. */
    private double fluid(BodyState body) {
        double lessCarbohydrate = 1 - intake / baseline.intakeKj();
        return -(SODIUM_LOST_MG_PER_KG * body.fluidKg() + SODIUM_LOST_WITHOUT_CARBOHYDRATE_MG * lessCarbohydrate)
                / SODIUM_MG_PER_KG;
    }
}
