package batchwright.needs.target;

import batchwright.needs.evidence.Citation;
import batchwright.needs.total.TrainingCost;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import batchwright.quantity.Mass;
import java.util.Optional;

/**
 * Energy left for the body: (intake - net cost of training) / fat-free mass [kcal/kg a day]. About 45 is balance, under 30 is
 * linked with harm (Loucks and Thuma 2003; IOC 2014 and 2018, from memory). The IOC of 2023 keeps the formula (Mountjoy M et al.
 * Br J Sports Med 2023;57:1073-1097), but sees no single limit for all.
 *
 * @param training empty when it is not known; then the figure is too high for whoever trains
 */
public record EnergyAvailability(Energy intake, Optional<Energy> training, Mass fatFreeMass) {
    public static final Citation SOURCE =
            new Citation("Loucks and Thuma 2003, IOC 2018: 30 kcal/kg; the stop at 25 is a choice of this program");

    /** Empty when body fat is not known. */
    public static Optional<EnergyAvailability> of(Eater eater, Energy total, Energy intake) {
        var resting = new Energy(total.kcal() / eater.activity().pal());
        return eater.body()
                .fatFreeMass()
                .map(mass -> new EnergyAvailability(intake, TrainingCost.of(eater.activity(), resting), mass));
    }

    public double kcalPerKg() {
        double net = training.map(Energy::kcal).orElse(0.0);
        return (intake.kcal() - net) / fatFreeMass.kg();
    }
}
