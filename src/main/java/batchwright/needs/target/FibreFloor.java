package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.Eater;
import batchwright.person.Sex;

/**
 * Least fibre in a day: the adequate intake by age and sex, 38 or 30 g (men to 50 years, and from 51), 25 or 21 g (women), or 14 g for 1000 kcal, which it
 * was derived from, whichever is less (IOM 2005; that the lesser counts is a choice of this program).
 */
public record FibreFloor(int grams, String says, Citation source) {
    private static final double G_PER_KCAL = 14.0 / 1000;
    private static final double OLDER_FROM_YEARS = 51;

    public static FibreFloor of(Eater eater, int aimKcal) {
        if (eater.adjustments().fibreG().isPresent()) {
            return new FibreFloor(eater.adjustments().fibreG().getAsInt(), "", new Citation("the eater's profile"));
        }
        if (HealthFloors.noFibre(eater)) {
            return new FibreFloor(0, "no rule: your doctor or dietitian says how much is right", HealthFloors.NO_FIBRE);
        }
        int adequate = adequate(eater.body());
        int byEnergy = Numerals.up(aimKcal * G_PER_KCAL);
        return new FibreFloor(
                Math.min(adequate, byEnergy),
                byEnergy < adequate ? "14 g per 1000 kcal" : "adequate intake by age and sex",
                new Citation("IOM, Dietary Reference Intakes, 2005, AI"));
    }

    private static int adequate(Body body) {
        boolean older = body.ageYears() >= OLDER_FROM_YEARS;
        if (body.sex() == Sex.MALE) {
            return older ? 30 : 38;
        }
        return older ? 21 : 25;
    }
}
