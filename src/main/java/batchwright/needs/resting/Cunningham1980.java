package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Resting energy from lean body mass. REE = 500 + 22 LBM [kcal/d], LBM lean body mass [kg], taken as fat-free mass.
 *
 * <p>The Harris-Benedict subjects without 16 trained athletes (223 people), their lean mass itself estimated; R2 0.70 (from
 * memory of the paper). Found good in recreational athletes by ten Haaf and Weijs 2014.
 *
 * <p>Source: Cunningham JJ. A reanalysis of the factors influencing basal metabolic rate in normal adults. Am J Clin Nutr
 * 1980;33:2372-2374.
 *
 * <p>Departures: the paper's second form, with age, is left out; no error of its own is known here, so 10 % is taken.
 */
public final class Cunningham1980 implements RestingEnergyEquation {
    private static final double KCAL_PER_KG_FAT_FREE = 22; // the form without age
    private static final double KCAL = 500; // the same equation's constant

    @Override
    public String name() {
        return "Cunningham 1980";
    }

    @Override
    public Citation source() {
        return new Citation("Cunningham, Am J Clin Nutr 1980;33:2372-2374");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults();
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return body.fatFreeMass().map(Mass::kg).map(kg -> new Energy(KCAL + KCAL_PER_KG_FAT_FREE * kg));
    }
}
