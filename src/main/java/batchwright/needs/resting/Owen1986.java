package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy of women who are not athletes, from weight. REE = 795 + 7.18 W [kcal/d], W weight [kg].
 *
 * <p>Derived on 44 women (8 of them athletes, who have an equation of their own) of 18-65 years and 43-143 kg.
 *
 * <p>Source: Owen OE et al. A reappraisal of caloric requirements in healthy women. Am J Clin Nutr 1986;44:1-19.
 *
 * <p>Departures: the athletes' form (50.4 + 21.1 W, from 8 women) is left out; no error of its own is known here, so 10 % is taken.
 */
public final class Owen1986 implements RestingEnergyEquation {
    private static final double KCAL_PER_KG = 7.18;
    private static final double KCAL = 795;

    @Override
    public String name() {
        return "Owen 1986";
    }

    @Override
    public Citation source() {
        return new Citation("Owen et al., Am J Clin Nutr 1986;44:1-19");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.ages(18, 65).weights(43, 143).note("made for women who are not athletes");
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return body.sex() == Sex.FEMALE
                ? Optional.of(new Energy(KCAL + KCAL_PER_KG * body.weight().kg()))
                : Optional.empty();
    }
}
