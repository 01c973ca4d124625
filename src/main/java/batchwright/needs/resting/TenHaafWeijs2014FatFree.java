package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Resting energy of recreational athletes from fat-free mass. REE = 22.771 FFM + 484.264 [kcal/d], FFM fat-free mass [kg].
 *
 * <p>Derived on 90 athletes (53 men, 37 women) of 18-35 years who trained 9.1 (SD 5.0) hours a week; FFM by air displacement.
 *
 * <p>Source: ten Haaf T, Weijs PJM. Resting energy expenditure prediction in recreational athletes of 18-35 years:
 * confirmation of Cunningham equation and an improved weight-based alternative. PLoS ONE 2014;9(10):e108460.
 *
 * <p>Departures: none; no error of its own is known here, so 10 % is taken.
 */
public final class TenHaafWeijs2014FatFree implements RestingEnergyEquation {
    private static final double KCAL_PER_KG_FAT_FREE = 22.771; // FFM form
    private static final double KCAL = 484.264; // the same equation's constant

    @Override
    public String name() {
        return "ten Haaf-Weijs 2014, fat-free mass";
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
        return body.fatFreeMass().map(Mass::kg).map(kg -> new Energy(KCAL + KCAL_PER_KG_FAT_FREE * kg));
    }
}
