package batchwright.needs.dynamics;

import static batchwright.needs.dynamics.Hall2011Parameters.GLYCOGEN_KG;
import static batchwright.needs.dynamics.Hall2011Parameters.WET_PER_DRY_GLYCOGEN;

/**
 * A body on one day of the model.
 *
 * @param fatKg fat
 * @param tissueKg all other mass but glycogen with its water, and with as much extracellular fluid as at the start
 * @param glycogenKg glycogen, dry
 * @param fluidKg extracellular fluid, more (positive) or less than at the start
 * @param adaptationKj adaptive thermogenesis [kJ/d]: what the body burns more (positive) or less because it eats more or less than
 *     before, beyond what follows from its mass
 */
public record BodyState(double fatKg, double tissueKg, double glycogenKg, double fluidKg, double adaptationKj) {
    /** How many figures a state has. */
    static final int SIZE = 5;

    private static final double PER_CENT = 100;

    /** From the figures in the order of the record. */
    static BodyState of(double[] figures) {
        return new BodyState(figures[0], figures[1], figures[2], figures[3], figures[4]);
    }

    double[] figures() {
        return new double[] {fatKg, tissueKg, glycogenKg, fluidKg, adaptationKj};
    }

    public double weightKg() {
        return fatKg + leanKg();
    }

    /** All that is not fat, water included [kg]. */
    public double leanKg() {
        return tissueKg + fluidKg + WET_PER_DRY_GLYCOGEN * glycogenKg;
    }

    /** Water with glycogen and salt, more (positive) or less than at the start: what moves in the first weeks and is no tissue [kg]. */
    public double waterShiftKg() {
        return fluidKg + WET_PER_DRY_GLYCOGEN * (glycogenKg - GLYCOGEN_KG);
    }

    public double fatPercent() {
        return fatKg / weightKg() * PER_CENT;
    }
}
