package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Eater;

/**
 * Least carbohydrate in a day: 130 g (RDA of adults, IOM 2005, by what the brain uses), unless the profile asks for another figure. It counts
 * fibre, as the food tables do. Where energy does not hold it beside the protein floor and 20 % of fat, it is what is left: a choice.
 *
 * @param grams not rounded
 */
public record CarbohydrateFloor(double grams, String says, Citation source, boolean lowered) {
    public static final int RDA_G = 130;
    private static final double KCAL_PER_G = 4; // general Atwater factor, that of protein too
    private static final double FAT_LEAST = 0.20; // of energy

    /** @param proteinG protein floor */
    public static CarbohydrateFloor of(Eater eater, int aimKcal, double proteinG) {
        if (eater.adjustments().carbohydrateG().isPresent()) {
            return new CarbohydrateFloor(wanted(eater), "", new Citation("the eater's profile"), false);
        }
        double room = Math.max(0, aimKcal * (1 - FAT_LEAST) / KCAL_PER_G - proteinG);
        boolean lowered = Numerals.below(room, RDA_G);
        return new CarbohydrateFloor(
                Math.min(RDA_G, room),
                lowered ? "130 g are published; this is what protein and fat leave" : "fibre included",
                new Citation("IOM, Dietary Reference Intakes, 2005, RDA"),
                lowered);
    }

    /** The most protein that leaves room for it beside 20 % of fat [g]. */
    static double proteinThatLeavesIt(Eater eater, int aimKcal) {
        return aimKcal * (1 - FAT_LEAST) / KCAL_PER_G - wanted(eater);
    }

    private static double wanted(Eater eater) {
        return eater.adjustments().carbohydrateG().orElse(RDA_G);
    }
}
