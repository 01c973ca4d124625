package batchwright.needs.resting;

import batchwright.needs.evidence.Estimate;
import batchwright.person.Body;
import java.util.List;
import java.util.Optional;

/** The published equations, and which of them the total is built on. */
public final class RestingEnergyEquations {
    private static final RestingEnergyEquation BY_WEIGHT = new MifflinStJeor1990();
    private static final RestingEnergyEquation BY_BODY_FAT = new Cunningham1991();

    private static final List<RestingEnergyEquation> ALL = List.of(
            BY_WEIGHT,
            BY_BODY_FAT,
            new Cunningham1980(),
            new TenHaafWeijs2014FatFree(),
            new TenHaafWeijs2014Weight(),
            new Henry2005WeightAndHeight(),
            new Henry2005Weight(),
            new Mueller2004(),
            new Mueller2004ByBmi(),
            new Schofield1985WeightAndHeight(),
            new Schofield1985Weight(),
            new Owen1986(),
            new Owen1987(),
            new RozaShizgal1984(),
            new HarrisBenedict1919());

    private RestingEnergyEquations() {}

    public static List<RestingEnergyEquation> all() {
        return ALL;
    }

    /**
     * The equation the total is built on: from fat-free mass when body fat was measured or comes from a tape, else from weight,
     * height and age. Body fat from BMI holds nothing that these do not, so it is no reason for another equation.
     */
    public static RestingEnergyEquation inUse(Body body) {
        return body.fatTellsMoreThanBmi() ? BY_BODY_FAT : BY_WEIGHT;
    }

    /** How far the resting energy in use moves when body fat is so many percentage points higher [kcal/d]. */
    public static double kcalOfFatPoints(Body body, double points) {
        return FatDoubt.kcal(inUse(body), body, points);
    }

    /** Every equation that can be worked out for this body, the one in use first. */
    public static List<Estimate> estimates(Body body) {
        RestingEnergyEquation inUse = inUse(body);
        return ALL.stream()
                .sorted((a, b) -> Boolean.compare(b == inUse, a == inUse))
                .map(equation -> equation.estimate(body, equation == inUse))
                .flatMap(Optional::stream)
                .toList();
    }
}
