package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.safety.SafetyFigure;
import batchwright.needs.total.NetExercise;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Energy left for the body: (intake - net cost of exercise) / fat-free mass [kcal/kg a day]. About 45 is balance, under 30 is
 * linked with harm (Loucks and Thuma 2003; IOC 2014 and 2018, from memory). The IOC of 2023 keeps the formula (Mountjoy M et al.
 * Br J Sports Med 2023;57:1073-1097), but sees no single limit for all. It was never shown for obesity: from BMI 30 on it is left out, a choice.
 */
public record EnergyAvailability(Energy intake, NetExercise exercise, Mass fatFreeMass) {
    public static final Citation SOURCE = new Citation(
            "Loucks and Thuma 2003, IOC 2018: 30 kcal/kg; the stop at 25 and the range of exercise are choices of this program");

    /** Empty when body fat is not known, and from BMI 30 on. */
    public static Optional<EnergyAvailability> of(Eater eater, Energy total, Energy intake) {
        var resting = new Energy(total.kcal() / eater.activity().pal());
        return eater.body()
                .fatFreeMass()
                .filter(mass -> Numerals.below(eater.body().bmi(), SafetyFigure.ENERGY_AVAILABILITY_BMI.value()))
                .map(mass -> new EnergyAvailability(intake, NetExercise.of(eater.activity(), resting), mass));
    }

    public double kcalPerKg() {
        return left(exercise.likely());
    }

    /** When exercise takes as much as it may. */
    public double leastKcalPerKg() {
        return left(exercise.most());
    }

    /** When exercise takes as little as it may. */
    public double mostKcalPerKg() {
        return left(exercise.least());
    }

    /** In words: 39.8 (29.9 to 47.1) kcal ... after 750 (470 to 900) kcal of exercise, ... */
    public String says() {
        return Numerals.oneDecimal(kcalPerKg()) + " kcal a day (" + Numerals.whole(leastKcalPerKg()) + " to "
                + Numerals.whole(mostKcalPerKg()) + ") for each kg of fat-free mass, after "
                + Numerals.whole(exercise.likely().kcal()) + " kcal ("
                + Numerals.whole(exercise.least().kcal()) + " to "
                + Numerals.whole(exercise.most().kcal()) + ") of exercise on the average day, "
                + (exercise.counted()
                        ? "by the training that you count"
                        : "guessed from the PAL: counted training says it better");
    }

    private double left(Energy net) {
        return (intake.kcal() - net.kcal()) / fatFreeMass.kg();
    }
}
