package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Basal energy from weight by sex and age [kcal/d]:
 * <pre>
 *             male              female
 * 18 to 30    16.0 W + 545      13.1 W + 558
 * 30 to 60    14.2 W + 593      9.74 W + 694
 * 60 and over 13.5 W + 514      10.1 W + 569
 * </pre>
 * W weight [kg]. The answer jumps at 30 and 60 years.
 *
 * <p>Built without the Italian series that made up 47 % of Schofield's data, so lower than {@link Schofield1985Weight} in many groups; 10 552
 * measurements (that count from memory).
 *
 * <p>Source: Henry CJK. Basal metabolic rate studies in humans: measurement and development of new equations. Public Health
 * Nutr 2005;8(7A):1133-1152.
 *
 * <p>Departures: the bands for children and the finer ones above 60 are left out; the touching bands are read as in
 * {@link AgeBands}; no error of its own is known here, so 10 % is taken.
 */
public final class Henry2005Weight implements RestingEnergyEquation {
    private record Coefficients(double kcalPerKg, double kcal) {}

    private static final AgeBands<Coefficients> MALE =
            new AgeBands<>(new Coefficients(16.0, 545), new Coefficients(14.2, 593), new Coefficients(13.5, 514));
    private static final AgeBands<Coefficients> FEMALE =
            new AgeBands<>(new Coefficients(13.1, 558), new Coefficients(9.74, 694), new Coefficients(10.1, 569));

    @Override
    public String name() {
        return "Henry 2005, weight";
    }

    @Override
    public Citation source() {
        return new Citation("Henry, Public Health Nutr 2005;8(7A):1133-1152");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults();
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        Coefficients c = (body.sex() == Sex.MALE ? MALE : FEMALE).at(body.ageYears());
        return Optional.of(new Energy(c.kcalPerKg * body.weight().kg() + c.kcal));
    }
}
