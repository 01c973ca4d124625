package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Basal energy from weight and height by sex and age [kcal/d]:
 * <pre>
 *             male                        female
 * 18 to 30    14.4 W + 313 H + 113        10.4 W + 615 H - 282
 * 30 to 60    11.4 W + 541 H - 137        8.18 W + 502 H - 11.6
 * 60 and over 11.4 W + 541 H - 256        8.52 W + 421 H + 10.7
 * </pre>
 * W weight [kg], H height [m]. The answer jumps at 30 and 60 years.
 *
 * <p>Built without the Italian series that made up 47 % of Schofield's data, so lower than {@link Schofield1985Weight} in many groups; 10 552
 * measurements (that count from memory).
 *
 * <p>Source: Henry CJK. Basal metabolic rate studies in humans: measurement and development of new equations. Public Health
 * Nutr 2005;8(7A):1133-1152.
 *
 * <p>Departures: the bands for children are left out; the touching bands are read as in {@link AgeBands}; no error of its own is
 * known here, so 10 % is taken.
 */
public final class Henry2005WeightAndHeight implements RestingEnergyEquation {
    private record Coefficients(double kcalPerKg, double kcalPerMetre, double kcal) {}

    private static final AgeBands<Coefficients> MALE = new AgeBands<>(
            new Coefficients(14.4, 313, 113), new Coefficients(11.4, 541, -137), new Coefficients(11.4, 541, -256));
    private static final AgeBands<Coefficients> FEMALE = new AgeBands<>(
            new Coefficients(10.4, 615, -282), new Coefficients(8.18, 502, -11.6), new Coefficients(8.52, 421, 10.7));

    @Override
    public String name() {
        return "Henry 2005, weight and height";
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
        return Optional.of(new Energy(c.kcalPerKg * body.weight().kg()
                + c.kcalPerMetre * body.height().metres()
                + c.kcal));
    }
}
