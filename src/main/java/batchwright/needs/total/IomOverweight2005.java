package batchwright.needs.total;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.needs.total.IomFormula.Factors;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Total energy that holds the weight of people with a BMI of 25 or more, without a resting energy. [kcal/d]
 * <pre>
 * male   1085.6 - 10.08 A + PA (13.7 W + 416 H)   PA 1.00, 1.12, 1.29, 1.59
 * female  447.6 -  7.95 A + PA (11.4 W + 619 H)   PA 1.00, 1.16, 1.27, 1.44
 * </pre>
 * A age [years], W weight [kg], H height [m], PA by {@link IomCategory}. The women's PA are from memory, not seen.
 *
 * <p>For adults from 19 years with a BMI of 25 or more.
 *
 * <p>Source: Institute of Medicine. Dietary Reference Intakes for Energy, Carbohydrate, Fiber, Fat, Fatty Acids, Cholesterol,
 * Protein, and Amino Acids. 2002/2005, chapter 5.
 *
 * <p>Departures: no error figure could be checked, so 10 % is taken.
 */
public final class IomOverweight2005 {
    private static final IomFormula MALE =
            new IomFormula(1085.6, -10.08, 13.7, 416, new Factors(1.00, 1.12, 1.29, 1.59));
    private static final IomFormula FEMALE =
            new IomFormula(447.6, -7.95, 11.4, 619, new Factors(1.00, 1.16, 1.27, 1.44));

    /** From here on; normal weight ends below. */
    static final double LEAST_BMI = 25;

    private static final StudiedPeople STUDIED =
            StudiedPeople.ages(19, Double.POSITIVE_INFINITY).bmi(LEAST_BMI, Double.POSITIVE_INFINITY);

    private IomOverweight2005() {}

    /** The estimate for the category this PAL falls in; empty when it falls in none. */
    public static Optional<Estimate> total(Body body, double pal) {
        return IomCategory.of(pal).map(category -> estimate(body, category));
    }

    private static Estimate estimate(Body body, IomCategory category) {
        boolean male = body.sex() == Sex.MALE;
        var perDay = new Energy((male ? MALE : FEMALE).kcal(body, category));
        UsualError error = UsualError.uncheckedTenPercentOf(perDay);
        return new Estimate(
                "IOM 2005 TEE from BMI 25, " + category.label(),
                perDay,
                error.kcal(),
                false,
                new Citation("Institute of Medicine, Dietary Reference Intakes for Energy ..., 2002/2005, chapter 5"
                        + (male ? "" : " (factors of activity from memory)") + "; error: " + error.says()),
                STUDIED.caveats(body));
    }
}
