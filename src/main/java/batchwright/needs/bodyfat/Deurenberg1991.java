package batchwright.needs.bodyfat;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import java.util.ArrayList;
import java.util.List;

/**
 * Body fat of adults from BMI, age and sex. fat % = 1.20 BMI + 0.23 A - 10.8 s - 5.4
 * A age [years], s = 1 (male) or 0 (female).
 *
 * <p>Derived on 1229 people of 7-83 years with a BMI of 13.9-40.9; R2 0.79, standard error 4.1 percentage points.
 *
 * <p>Source: Deurenberg P, Weststrate JA, Seidell JC. Body mass index as a measure of body fatness: age- and sex-specific
 * prediction formulas. Br J Nutr 1991;65:105-114, the formula for adults.
 *
 * <p>Departures: an answer outside 3 to 60 % is moved to that end.
 */
public final class Deurenberg1991 {
    private static final double POINTS_PER_BMI = 1.20;
    private static final double POINTS_PER_YEAR = 0.23;
    private static final double POINTS_MALE = -10.8;
    private static final double POINTS = -5.4;
    private static final double ERROR_POINTS = 4.1;

    private static final Citation SOURCE =
            new Citation("Deurenberg et al., Br J Nutr 1991;65:105-114; standard error 4.1 points");
    private static final StudiedPeople STUDIED =
            StudiedPeople.adults().bmi(13.9, 40.9).note("too high for muscular and for obese people");

    private Deurenberg1991() {}

    public static BodyFatEstimate of(Body body) {
        double percent = POINTS_PER_BMI * body.bmi()
                + POINTS_PER_YEAR * body.ageYears()
                + (body.sex() == Sex.MALE ? POINTS_MALE : 0)
                + POINTS;
        return new BodyFatEstimate(
                "Deurenberg 1991",
                FatBounds.nearest(percent),
                ERROR_POINTS,
                FatBounds.hold(percent),
                false,
                SOURCE,
                caveats(body, percent));
    }

    private static List<String> caveats(Body body, double percent) {
        List<String> caveats = new ArrayList<>(STUDIED.caveats(body));
        if (!FatBounds.hold(percent)) {
            caveats.add("the formula gives " + Numerals.whole(percent)
                    + " %, which cannot be: the nearest that can is taken");
        }
        return List.copyOf(caveats);
    }
}
