package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Basal energy from weight by sex and age, as FAO/WHO/UNU 2004 print it in Table 5.2 [MJ/d]:
 * <pre>
 *             male                female
 * 18 to 30    0.063 W + 2.896     0.062 W + 2.036
 * 30 to 60    0.048 W + 3.653     0.034 W + 3.538
 * 60 and over 0.049 W + 2.459     0.038 W + 2.755
 * </pre>
 * W weight [kg]. The answer jumps at 30 and 60 years.
 *
 * <p>Standard errors of estimate by band 108-167 kcal, on 38-2879 people (from memory of the table). Too high in many groups
 * today and in the tropics (Henry 2005).
 *
 * <p>Source: Schofield WN. Predicting basal metabolic rate, new standards and review of previous work. Hum Nutr Clin Nutr
 * 1985;39 Suppl 1:5-41; FAO/WHO/UNU, Human energy requirements, Rome 2004, Table 5.2.
 *
 * <p>Departures: the table's bands for children are left out; the touching bands are read as in {@link AgeBands}.
 */
public final class Schofield1985Weight implements RestingEnergyEquation {
    /** In kJ: the printed MJ times 1000. */
    private record Coefficients(double kjPerKg, double kj) {}

    private static final AgeBands<Coefficients> MALE =
            new AgeBands<>(new Coefficients(63, 2896), new Coefficients(48, 3653), new Coefficients(49, 2459));
    private static final AgeBands<Coefficients> FEMALE =
            new AgeBands<>(new Coefficients(62, 2036), new Coefficients(34, 3538), new Coefficients(38, 2755));

    // Standard errors of estimate [kcal/d], Table 5.2, from memory.
    private static final AgeBands<Double> ERROR_KCAL_MALE = new AgeBands<>(153.0, 167.0, 164.0);
    private static final AgeBands<Double> ERROR_KCAL_FEMALE = new AgeBands<>(119.0, 111.0, 108.0);

    @Override
    public String name() {
        return "Schofield 1985 (FAO/WHO/UNU), weight";
    }

    @Override
    public Citation source() {
        return new Citation("FAO/WHO/UNU, Human energy requirements, 2004, Table 5.2 (Schofield 1985)");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults().note("too high in many groups today (Henry 2005)");
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        Coefficients c = (body.sex() == Sex.MALE ? MALE : FEMALE).at(body.ageYears());
        return Optional.of(Energy.ofKilojoules(c.kjPerKg * body.weight().kg() + c.kj));
    }

    @Override
    public UsualError error(Body body, Energy perDay) {
        AgeBands<Double> errors = body.sex() == Sex.MALE ? ERROR_KCAL_MALE : ERROR_KCAL_FEMALE;
        return new UsualError(errors.at(body.ageYears()), "standard error of estimate (figure from memory)");
    }
}
