package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Basal energy from weight and height by sex and age [MJ/d]:
 * <pre>
 *             male                           female
 * 18 to 30    0.063 W - 0.042 H + 2.953      0.057 W + 1.184 H + 0.411
 * 30 to 60    0.048 W - 0.011 H + 3.670      0.034 W + 0.006 H + 3.530
 * 60 and over 0.038 W + 4.068 H - 3.491      0.033 W + 1.917 H + 0.074
 * </pre>
 * W weight [kg], H height [m]. The answer jumps at 30 and 60 years.
 *
 * <p>Source: Schofield WN. Predicting basal metabolic rate, new standards and review of previous work. Hum Nutr Clin Nutr
 * 1985;39 Suppl 1:5-41.
 *
 * <p>Departures: the bands for children are left out; the touching bands are read as in {@link AgeBands}; no error of its own is
 * known here, so 10 % is taken.
 */
public final class Schofield1985WeightAndHeight implements RestingEnergyEquation {
    /** In kJ: the printed MJ times 1000. */
    private record Coefficients(double kjPerKg, double kjPerMetre, double kj) {}

    private static final AgeBands<Coefficients> MALE = new AgeBands<>(
            new Coefficients(63, -42, 2953), new Coefficients(48, -11, 3670), new Coefficients(38, 4068, -3491));
    private static final AgeBands<Coefficients> FEMALE = new AgeBands<>(
            new Coefficients(57, 1184, 411), new Coefficients(34, 6, 3530), new Coefficients(33, 1917, 74));

    @Override
    public String name() {
        return "Schofield 1985, weight and height";
    }

    @Override
    public Citation source() {
        return new Citation("Schofield, Hum Nutr Clin Nutr 1985;39 Suppl 1:5-41");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults().note("too high in many groups today (Henry 2005)");
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        Coefficients c = (body.sex() == Sex.MALE ? MALE : FEMALE).at(body.ageYears());
        return Optional.of(Energy.ofKilojoules(
                c.kjPerKg * body.weight().kg() + c.kjPerMetre * body.height().metres() + c.kj));
    }
}
