package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Resting energy from fat-free mass. REE = 370 + 21.6 FFM [kcal/d], FFM fat-free mass [kg].
 *
 * <p>A synthesis of several studies of adults; fat-free mass explains 65-90 % of the differences in resting energy between
 * people (from memory of the paper). Only as good as the body-fat figure that it is given.
 *
 * <p>Source: Cunningham JJ. Body composition as a determinant of energy expenditure: a synthetic review and a proposed general
 * prediction equation. Am J Clin Nutr 1991;54:963-969, the general prediction equation.
 *
 * <p>Departures: none; no error of its own is known here, so 10 % is taken.
 */
public final class Cunningham1991 implements RestingEnergyEquation {
    private static final double KCAL_PER_KG_FAT_FREE = 21.6; // general prediction equation
    private static final double KCAL = 370; // the same equation's constant

    @Override
    public String name() {
        return "Cunningham 1991";
    }

    @Override
    public Citation source() {
        return new Citation("Cunningham, Am J Clin Nutr 1991;54:963-969");
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
