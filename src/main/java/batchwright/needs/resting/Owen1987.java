package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy of men, from weight. REE = 879 + 10.2 W [kcal/d], W weight [kg].
 *
 * <p>Derived on 60 men; 18-82 years and at most 171 kg are the limits of this study and that of women together (Owen 1988).
 *
 * <p>Source: Owen OE et al. A reappraisal of the caloric requirements of men. Am J Clin Nutr 1987;46:875-885.
 *
 * <p>Departures: none; no error of its own is known here, so 10 % is taken.
 */
public final class Owen1987 implements RestingEnergyEquation {
    private static final double KCAL_PER_KG = 10.2;
    private static final double KCAL = 879;

    @Override
    public String name() {
        return "Owen 1987";
    }

    @Override
    public Citation source() {
        return new Citation("Owen et al., Am J Clin Nutr 1987;46:875-885");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.ages(18, 82).weights(0, 171);
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return body.sex() == Sex.MALE
                ? Optional.of(new Energy(KCAL + KCAL_PER_KG * body.weight().kg()))
                : Optional.empty();
    }
}
