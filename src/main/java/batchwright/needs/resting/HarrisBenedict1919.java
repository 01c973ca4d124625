package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.needs.evidence.UsualError;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Basal energy from weight, height and age, the oldest equation still in use.
 * Male 66.4730 + 13.7516 W + 5.0033 H - 6.7550 A; female 655.0955 + 9.5634 W + 1.8496 H - 4.6756 A [kcal/d]
 * W weight [kg], H height [cm], A age [years].
 *
 * <p>Derived on 136 men and 103 women, mostly young and of normal weight. About 5 % above resting energy measured today
 * (Mifflin et al. 1990); precision about 14 % for one normal person (Roza and Shizgal 1984).
 *
 * <p>Source: Harris JA, Benedict FG. A Biometric Study of Basal Metabolism in Man. Carnegie Institution of Washington,
 * publication 279, 1919; short form Proc Natl Acad Sci USA 1918;4:370-373.
 *
 * <p>Departures: none. The caveat outside BMI 18.5-25 is our reading of "mostly normal weight".
 */
public final class HarrisBenedict1919 implements RestingEnergyEquation {
    private record Coefficients(double kcal, double kcalPerKg, double kcalPerCm, double kcalPerYear) {}

    private static final Coefficients MALE = new Coefficients(66.4730, 13.7516, 5.0033, -6.7550);
    private static final Coefficients FEMALE = new Coefficients(655.0955, 9.5634, 1.8496, -4.6756);

    private static final double ERROR_FRACTION = 0.14;

    @Override
    public String name() {
        return "Harris-Benedict 1919";
    }

    @Override
    public Citation source() {
        return new Citation("Harris, Benedict, Carnegie Institution publ. 279, 1919");
    }

    @Override
    public StudiedPeople studied() {
        return StudiedPeople.adults()
                .bmi(18.5, 25)
                .note("about 5 % above resting energy measured today (Mifflin et al. 1990)");
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
        return new UsualError(perDay.kcal() * ERROR_FRACTION, "14 % for a normal person (Roza, Shizgal 1984)");
    }
}
