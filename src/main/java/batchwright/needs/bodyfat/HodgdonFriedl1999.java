package batchwright.needs.bodyfat;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.person.Tape;
import batchwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Body fat of adults by tape, everything in <b>inches</b>. Men: fat % = 86.010 log10(waist - neck) - 70.041 log10(height) + 36.76.
 * Women: fat % = 163.205 log10(waist + hips - neck) - 97.684 log10(height) - 78.387. The waist of men is taken at the navel, that of
 * women where it is narrowest. The neck is taken off for both; some copies add it for women by mistake.
 *
 * <p>Derived on people of the US Navy (from memory); R 0.903 (men) and 0.856 (women), standard error 3.52 and 3.61 percentage points.
 *
 * <p>Source: Hodgdon JA, Friedl KE. Development of the DoD body composition estimation equations. Naval Health Research Center
 * Technical Document 99-2B, 1999 (title and year from memory, coefficients and errors checked). It is the direct form of the tape of
 * Hodgdon JA, Beckett MB. Naval Health Research Center Reports 84-11 (men) and 84-29 (women), 1984.
 *
 * <p>Departures: an answer outside 3 to 60 % is moved to that end, and said to be out of bounds. The form of 1984, through body density
 * and in cm, is not used: its constants could be checked to three digits only, too few for a logarithm.
 */
public final class HodgdonFriedl1999 {
    private static final double MALE_GIRTH = 86.010;
    private static final double MALE_HEIGHT = -70.041;
    private static final double MALE = 36.76;
    private static final double MALE_ERROR_POINTS = 3.52;
    private static final double FEMALE_GIRTH = 163.205;
    private static final double FEMALE_HEIGHT = -97.684;
    private static final double FEMALE = -78.387;
    private static final double FEMALE_ERROR_POINTS = 3.61;

    private static final StudiedPeople STUDIED = StudiedPeople.adults();

    private HodgdonFriedl1999() {}

    /** Empty without the girths that the formula of this sex needs. */
    public static Optional<BodyFatEstimate> of(Body body) {
        return body.tape().flatMap(tape -> percent(body, tape)).map(percent -> estimate(body, percent));
    }

    private static Optional<Double> percent(Body body, Tape tape) {
        double height = Math.log10(body.height().inches());
        double waistLessNeck = tape.waist().inches() - tape.neck().inches();
        if (body.sex() == Sex.MALE) {
            return Optional.of(MALE_GIRTH * Math.log10(waistLessNeck) + MALE_HEIGHT * height + MALE);
        }
        return tape.hips()
                .map(hips ->
                        FEMALE_GIRTH * Math.log10(waistLessNeck + hips.inches()) + FEMALE_HEIGHT * height + FEMALE);
    }

    private static BodyFatEstimate estimate(Body body, double percent) {
        double error = body.sex() == Sex.MALE ? MALE_ERROR_POINTS : FEMALE_ERROR_POINTS;
        Share fat = FatBounds.nearest(percent);
        List<String> caveats = new ArrayList<>(STUDIED.caveats(body));
        boolean possible = FatBounds.hold(percent);
        if (!possible) {
            caveats.add("the formula gives " + Numerals.whole(percent) + " %, which cannot be: measure again");
        }
        return new BodyFatEstimate(
                "tape, Hodgdon-Friedl 1999",
                fat,
                error,
                possible,
                true,
                new Citation("Hodgdon, Friedl, NHRC 99-2B, 1999, after Hodgdon, Beckett 1984; standard error " + error
                        + " points"),
                List.copyOf(caveats));
    }
}
