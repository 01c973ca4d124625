package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy from weight and age. REE = 0.047 W + 1.009 s - 0.01452 A + 3.21 [MJ/d]
 * W weight [kg], s = 1 (male) or 0 (female), A age [years].
 *
 * <p>A German database of 2528 people of 5-91 years; R2 0.73, standard error of estimate 0.83 MJ (all from memory of the paper).
 *
 * <p>Source: Mueller MJ et al. World Health Organization equations have shortcomings for predicting resting energy expenditure
 * in persons from a modern, affluent population. Am J Clin Nutr 2004;80:1379-1390.
 *
 * <p>Departures: none.
 */
public final class Mueller2004 implements RestingEnergyEquation {
    private static final double KJ_PER_KG = 47; // the equation for all, printed in MJ: times 1000
    private static final double KJ_MALE = 1009;
    private static final double KJ_PER_YEAR = -14.52;
    private static final double KJ = 3210;
    private static final double ERROR_KJ = 830; // from memory of the paper

    @Override
    public String name() {
        return "Mueller 2004";
    }

    @Override
    public Citation source() {
        return new Citation("Mueller et al., Am J Clin Nutr 2004;80:1379-1390");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.ages(5, 91);
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return Optional.of(Energy.ofKilojoules(KJ_PER_KG * body.weight().kg()
                + (body.sex() == Sex.MALE ? KJ_MALE : 0)
                + KJ_PER_YEAR * body.ageYears()
                + KJ));
    }

    @Override
    public UsualError error(Body body, Energy perDay) {
        return new UsualError(
                Energy.ofKilojoules(ERROR_KJ).kcal(), "standard error of estimate 0.83 MJ (figure from memory)");
    }
}
