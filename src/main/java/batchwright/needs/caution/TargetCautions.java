package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.target.CarbohydrateFloor;
import batchwright.needs.target.ProteinFloor;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.List;

/** Says where parts of a target clash, or what the eater asks for lies outside what is published. None stops planning. */
public final class TargetCautions {
    private static final double KCAL_PER_G = 4;
    private static final double PER_CENT = 100;
    private static final Citation AMDR =
            new Citation("IOM, Dietary Reference Intakes, 2005: protein 10-35 % of energy");
    private static final Citation RDA =
            new Citation("IOM, Dietary Reference Intakes, 2005: carbohydrate at least 130 g");

    private TargetCautions() {}

    public static List<Caution> of(Eater eater, Targets targets) {
        List<Caution> cautions = new ArrayList<>();
        ProteinFloor protein = targets.protein();
        double share = KCAL_PER_G * protein.grams() / targets.day().energyAimKcal();
        if (Numerals.above(share, ProteinFloor.MOST_OF_ENERGY)) {
            cautions.add(Caution.warn(
                    "protein_share_high",
                    "The protein that the profile asks for is " + Numerals.whole(share * PER_CENT)
                            + " % of the energy; more than 35 % is outside the range for adults and crowds out other food.",
                    AMDR));
        }
        if (protein.lowered()) {
            cautions.add(Caution.warn(
                    "protein_lowered",
                    "So little energy does not hold as much protein as the evidence suggests: the floor is lowered to "
                            + Numerals.up(protein.grams()) + " g. A slower goal holds more.",
                    AMDR));
        }
        CarbohydrateFloor carbohydrate = targets.carbohydrate();
        if (Numerals.below(carbohydrate.grams(), CarbohydrateFloor.RDA_G)) {
            cautions.add(Caution.warn(
                    "carbohydrate_low",
                    "The day may hold less than 130 g of carbohydrate, the amount that the brain uses"
                            + (carbohydrate.lowered()
                                    ? ", because protein and fat leave no more room"
                                    : ", as the profile asks")
                            + ". Ask a doctor or dietitian first if you take any medicine.",
                    RDA));
        }
        return cautions;
    }
}
