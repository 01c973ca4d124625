package batchwright.needs.total;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Estimate;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.List;
import java.util.Optional;

/**
 * Total energy that holds body weight, without a resting energy: the second opinion. EER = a - b A + c H + d W [kcal/d]
 * A age [years], H height [cm], W weight [kg]; a, b, c, d by sex and category of activity.
 *
 * <p>Categories by PAL: inactive 1.00 to under 1.53, low active to under 1.68, active to under 1.85, very active to under 2.50.
 * For adults from 19 years, one set for every BMI.
 *
 * <p>Source: National Academies of Sciences, Engineering, and Medicine. Dietary Reference Intakes for Energy. 2023, doi 10.17226/26818.
 *
 * <p>Departures: no error figure could be checked, so 10 % is taken.
 */
public final class NasemEer2023 {
    private record Coefficients(double kcal, double kcalPerYear, double kcalPerCm, double kcalPerKg) {}

    /** Category of activity: from its least PAL up to that of the next. */
    private record Category(String label, double leastPal, Coefficients male, Coefficients female) {}

    private static final List<Category> CATEGORIES = List.of(
            new Category(
                    "inactive",
                    1.00,
                    new Coefficients(753.07, -10.83, 6.50, 14.10),
                    new Coefficients(584.90, -7.01, 5.72, 11.71)),
            new Category(
                    "low active",
                    1.53,
                    new Coefficients(581.47, -10.83, 8.30, 14.94),
                    new Coefficients(575.77, -7.01, 6.60, 12.14)),
            new Category(
                    "active",
                    1.68,
                    new Coefficients(1004.82, -10.83, 6.52, 15.91),
                    new Coefficients(710.25, -7.01, 6.54, 12.34)),
            new Category(
                    "very active",
                    1.85,
                    new Coefficients(-517.88, -10.83, 15.61, 19.11),
                    new Coefficients(511.83, -7.01, 9.07, 12.56)));

    private static final double MOST_PAL = 2.50;
    private static final StudiedPeople STUDIED = StudiedPeople.ages(19, Double.POSITIVE_INFINITY);

    private NasemEer2023() {}

    /** The estimate for the category this PAL falls in; empty when it falls in none. */
    public static Optional<Estimate> total(Body body, double pal) {
        return category(pal).map(category -> estimate(body, category));
    }

    private static Optional<Category> category(double pal) {
        if (pal >= MOST_PAL) {
            return Optional.empty();
        }
        return CATEGORIES.stream().filter(category -> pal >= category.leastPal).reduce((lower, higher) -> higher);
    }

    private static Estimate estimate(Body body, Category category) {
        Coefficients c = body.sex() == Sex.MALE ? category.male : category.female;
        Energy perDay = new Energy(c.kcal
                + c.kcalPerYear * body.ageYears()
                + c.kcalPerCm * body.height().cm()
                + c.kcalPerKg * body.weight().kg());
        UsualError error = UsualError.uncheckedTenPercentOf(perDay);
        return new Estimate(
                "NASEM 2023 EER, " + category.label,
                perDay,
                error.kcal(),
                false,
                new Citation("National Academies, Dietary Reference Intakes for Energy, 2023; error: " + error.says()),
                STUDIED.caveats(body));
    }
}
