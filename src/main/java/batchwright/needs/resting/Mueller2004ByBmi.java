package batchwright.needs.resting;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.StudiedPeople;
import batchwright.person.Body;
import batchwright.person.Sex;
import batchwright.quantity.Energy;
import java.util.Optional;

/**
 * Resting energy by an equation for each group of body mass index [MJ/d]:
 * <pre>
 * over 18.5 to 25  0.02219 W + 0.02118 H - 0.01191 A + 0.884 s + 1.233
 * over 25 to 30    0.04507 W             - 0.01553 A + 1.006 s + 3.407
 * 30 and over      0.05 W                - 0.01586 A + 1.103 s + 2.924
 * </pre>
 * W weight [kg], H height [cm], A age [years], s = 1 (male) or 0 (female). The answer jumps where the groups meet.
 *
 * <p>A German database of 2528 people of 5-91 years (from memory of the paper).
 *
 * <p>Source: Mueller MJ et al. World Health Organization equations have shortcomings for predicting resting energy expenditure
 * in persons from a modern, affluent population. Am J Clin Nutr 2004;80:1379-1390.
 *
 * <p>Departures: the paper's group up to BMI 18.5 is left out. At 50 kg and 170 cm it lies a quarter to a third below every
 * other equation here, and the paper itself could not be looked up. The printed groups touch; here a BMI of 25 belongs to the lower group and
 * 30 to the upper one. No error of its own is known here, so 10 % is taken.
 */
public final class Mueller2004ByBmi implements RestingEnergyEquation {
    /** In kJ: the printed MJ times 1000. */
    private record Group(double kjPerKg, double kjPerCm, double kjPerYear, double kjMale, double kj) {}

    private static final double LEAST_BMI = 18.5; // not included
    private static final Group NORMAL = new Group(22.19, 21.18, -11.91, 884, 1233);
    private static final Group OVERWEIGHT = new Group(45.07, 0, -15.53, 1006, 3407);
    private static final Group OBESE = new Group(50, 0, -15.86, 1103, 2924);

    @Override
    public String name() {
        return "Mueller 2004, by BMI";
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
        if (body.bmi() <= LEAST_BMI) {
            return Optional.empty();
        }
        Group g = group(body.bmi());
        return Optional.of(Energy.ofKilojoules(g.kjPerKg * body.weight().kg()
                + g.kjPerCm * body.height().cm()
                + g.kjPerYear * body.ageYears()
                + (body.sex() == Sex.MALE ? g.kjMale : 0)
                + g.kj));
    }

    private static Group group(double bmi) {
        if (bmi <= 25) {
            return NORMAL;
        }
        return bmi < 30 ? OVERWEIGHT : OBESE;
    }
}
