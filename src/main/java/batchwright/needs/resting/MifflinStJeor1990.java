package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy from weight, height and age. REE = 10 W + 6.25 H - 5 A + s [kcal/d]
 * W weight [kg], H height [cm], A age [years], s = +5 (male) or -161 (female).
 *
 * <p>Derived on 498 adults (251 men, 247 women) of 19-78 years, 264 of normal weight and 234 obese; R2 0.71.
 * Within 10 % of measured resting energy in 78 % of a test population (St Jeor et al. 2004).
 *
 * <p>Source: Mifflin MD, St Jeor ST, Hill LA, Scott BJ, Daugherty SA, Koh YO. A new predictive equation for resting energy
 * expenditure in healthy individuals. Am J Clin Nutr 1990;51:241-247, the simplified pair of equations.
 *
 * <p>Departures: none; the paper's unrounded form (9.99 W + 6.25 H - 4.92 A + 166 s - 161) differs by a few kcal.
 */
public final class MifflinStJeor1990 implements RestingEnergyEquation {
    // The simplified equations; the two sexes differ in the constant only.
    private static final double KCAL_PER_KG = 10;
    private static final double KCAL_PER_CM = 6.25;
    private static final double KCAL_PER_YEAR = -5;
    private static final double KCAL_MALE = 5;
    private static final double KCAL_FEMALE = -161;
    private static final double ERROR_FRACTION = 0.10;

    @Override
    public String name() {
        return "Mifflin-St Jeor 1990";
    }

    @Override
    public Citation source() {
        return new Citation("Mifflin et al., Am J Clin Nutr 1990;51:241-247");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.ages(19, 78).bmi(18.5, Double.POSITIVE_INFINITY);
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        return Optional.of(new Energy(KCAL_PER_KG * body.weight().kg()
                + KCAL_PER_CM * body.height().cm()
                + KCAL_PER_YEAR * body.ageYears()
                + (body.sex() == Sex.MALE ? KCAL_MALE : KCAL_FEMALE)));
    }

    @Override
    public UsualError error(Body body, Energy perDay) {
        return new UsualError(
                perDay.kcal() * ERROR_FRACTION,
                "within 10 % for 78 people in 100 (St Jeor et al., Top Clin Nutr 2004)");
    }
}
