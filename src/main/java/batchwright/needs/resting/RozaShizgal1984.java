package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy from weight, height and age: the Harris-Benedict data refitted together with later subjects.
 * Male 88.362 + 13.397 W + 4.799 H - 5.677 A; female 447.593 + 9.247 W + 3.098 H - 4.330 A [kcal/d]
 * W weight [kg], H height [cm], A age [years].
 *
 * <p>Derived on the 239 Harris-Benedict subjects and 98 later ones, of wider ages. 95 % range about +-213 kcal (men) and
 * +-201 kcal (women); these two figures are from memory of the paper.
 *
 * <p>Source: Roza AM, Shizgal HM. The Harris Benedict equation reevaluated. Am J Clin Nutr 1984;40:168-182.
 *
 * <p>Departures: none.
 */
public final class RozaShizgal1984 implements RestingEnergyEquation {
    private record Coefficients(double kcal, double kcalPerKg, double kcalPerCm, double kcalPerYear) {}

    private static final Coefficients MALE = new Coefficients(88.362, 13.397, 4.799, -5.677);
    private static final Coefficients FEMALE = new Coefficients(447.593, 9.247, 3.098, -4.330);

    private static final double RANGE_KCAL_MALE = 213; // 95 % range, from memory of the paper
    private static final double RANGE_KCAL_FEMALE = 201;

    @Override
    public String name() {
        return "Roza-Shizgal 1984";
    }

    @Override
    public Citation source() {
        return new Citation("Roza, Shizgal, Am J Clin Nutr 1984;40:168-182");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults();
    }

    @Override
    public Optional<Energy> perDay(Body body) {
        Coefficients c = body.sex() == Sex.MALE ? MALE : FEMALE;
        return Optional.of(new Energy(c.kcal
                + c.kcalPerKg * body.weight().kg()
                + c.kcalPerCm * body.height().cm()
                + c.kcalPerYear * body.ageYears()));
    }

    @Override
    public UsualError error(Body body, Energy perDay) {
        return new UsualError(
                body.sex() == Sex.MALE ? RANGE_KCAL_MALE : RANGE_KCAL_FEMALE,
                "95 people in 100 are inside (figure from memory)");
    }
}
