package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.person.BodyFat;
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

    private static final double OWN_SPREAD = 0.09;
    private static final double HALF = 0.5;

    private RestingEnergyEquations() {}

    public static List<RestingEnergyEquation> all() {
        return ALL;
    }

    /**
     * The equation the total is built on: from fat-free mass when body fat was measured or comes from a tape, else from weight,
     * height and age. Body fat from BMI tells nothing that these do not, so it is no reason for another equation.
     */
    public static RestingEnergyEquation inUse(Body body) {
        return body.fatTellsMoreThanBmi() ? BY_BODY_FAT : BY_WEIGHT;
    }

    /**
     * How far one person's resting energy lies from the equation in use, standard deviation [kcal/d]: 9 % of it, and what the error of body
     * fat or a doubt about it adds, as squares. Published is that 70 to 82 people in 100 lie within 10 % (Frankenfield 2005, from memory; St Jeor
     * 2004: 78), which is a standard deviation of 7.5 to 9.6 %; 9 % is a choice.
     */
    public static double spreadKcal(Body body) {
        double own = inUse(body).perDay(body).orElseThrow().kcal() * OWN_SPREAD;
        double fat = kcalOfFatPoints(body, body.fatErrorPoints().orElse(0));
        return Math.hypot(Math.hypot(own, fat), kcalOfDoubt(body));
    }

    /** Halfway to the equation from fat-free mass when body fat is told but doubtful, a choice [kcal/d]; else 0. */
    private static double kcalOfDoubt(Body body) {
        return body.fat().filter(BodyFat.Doubted.class::isInstance).isPresent()
                ? HALF
                        * Math.abs(BY_BODY_FAT.perDay(body).orElseThrow().kcal()
                                - BY_WEIGHT.perDay(body).orElseThrow().kcal())
                : 0;
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
                .map(estimate -> estimate.used() ? withDoubt(estimate, body) : estimate)
                .toList();
    }

    private static Estimate withDoubt(Estimate estimate, Body body) {
        double kcal = kcalOfDoubt(body);
        return kcal == 0
                ? estimate
                : new Estimate(
                        estimate.equation(),
                        estimate.perDay(),
                        Math.hypot(estimate.errorKcal(), kcal),
                        estimate.used(),
                        new Citation(estimate.source().text() + "; with " + Numerals.whole(kcal)
                                + " kcal, half the way to the equation from the doubtful body fat"),
                        estimate.caveats());
    }
}
