package batchwright.needs.total;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.total.IomFormula.Factors;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Total energy that holds a normal body weight, without a resting energy. [kcal/d]
 * <pre>
 * male   661.8 - 9.53 A + PA (15.91 W + 539.6 H)   PA 1.00, 1.11, 1.25, 1.48
 * female 354.1 - 6.91 A + PA ( 9.36 W + 726 H)     PA 1.00, 1.12, 1.27, 1.45
 * </pre>
 * A age [years], W weight [kg], H height [m], PA by {@link IomCategory}.
 *
 * <p>For adults from 19 years with a BMI of 18.5 to 25. Standard error of fit 199 kcal (men) and 162 kcal (women): from memory,
 * not seen.
 *
 * <p>Source: Institute of Medicine. Dietary Reference Intakes for Energy, Carbohydrate, Fiber, Fat, Fatty Acids, Cholesterol,
 * Protein, and Amino Acids. 2002/2005, chapter 5. A reprint gives the women's PA for both sexes below the table of examples;
 * the table itself was made with the men's, as here.
 *
 * <p>Departures: none.
 */
public final class IomEer2005 {
    private static final IomFormula MALE =
            new IomFormula(661.8, -9.53, 15.91, 539.6, new Factors(1.00, 1.11, 1.25, 1.48));
    private static final IomFormula FEMALE =
            new IomFormula(354.1, -6.91, 9.36, 726, new Factors(1.00, 1.12, 1.27, 1.45));
    private static final double FIT_ERROR_KCAL_MALE = 199; // from memory
    private static final double FIT_ERROR_KCAL_FEMALE = 162; // from memory

    private static final StudiedPeople STUDIED =
            StudiedPeople.ages(19, Double.POSITIVE_INFINITY).bmi(18.5, 25);

    private IomEer2005() {}

    /** The estimate for the category this PAL falls in; empty when it falls in none. */
    public static Optional<Estimate> total(Body body, double pal) {
        return IomCategory.of(pal).map(category -> estimate(body, category));
    }

    private static Estimate estimate(Body body, IomCategory category) {
        boolean male = body.sex() == Sex.MALE;
        return new Estimate(
                "IOM 2005 EER, " + category.label(),
                new Energy((male ? MALE : FEMALE).kcal(body, category)),
                male ? FIT_ERROR_KCAL_MALE : FIT_ERROR_KCAL_FEMALE,
                false,
                new Citation(
                        "Institute of Medicine, Dietary Reference Intakes for Energy ..., 2002/2005, chapter 5; error: standard"
                                + " error of fit (figure from memory)"),
                STUDIED.caveats(body));
    }
}
