package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy of recreational athletes from weight, height and age.
 * REE = 11.936 W + 587.728 H - 8.129 A + 191.027 s + 29.279 [kcal/d]
 * W weight [kg], H height [m], A age [years], s = 1 (male) or 0 (female).
 *
 * <p>Derived on 90 athletes (53 men, 37 women) of 18-35 years who trained 9.1 (SD 5.0) hours a week. Too low in very heavy
 * bodybuilders by later reports.
 *
 * <p>Source: ten Haaf T, Weijs PJM. Resting energy expenditure prediction in recreational athletes of 18-35 years:
 * confirmation of Cunningham equation and an improved weight-based alternative. PLoS ONE 2014;9(10):e108460.
 *
 * <p>Departures: none; no error of its own is known here, so 10 % is taken.
 */
public final class TenHaafWeijs2014Weight implements RestingEnergyEquation {
    // Weight form, in kcal.
    private static final double KCAL_PER_KG = 11.936;
    private static final double KCAL_PER_METRE = 587.728;
    private static final double KCAL_PER_YEAR = -8.129;
    private static final double KCAL_MALE = 191.027;
    private static final double KCAL = 29.279;

    @Override
    public String name() {
        return "ten Haaf-Weijs 2014, weight";
    }

    @Override
    public Citation source() {
        return new Citation("ten Haaf, Weijs, PLoS ONE 2014;9(10):e108460");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.ages(18, 35).note("made for people who train about 9 hours a week");
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return Optional.of(new Energy(KCAL_PER_KG * body.weight().kg()
                + KCAL_PER_METRE * body.height().metres()
                + KCAL_PER_YEAR * body.ageYears()
                + (body.sex() == Sex.MALE ? KCAL_MALE : 0)
                + KCAL));
    }
}
