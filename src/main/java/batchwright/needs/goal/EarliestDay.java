package batchwright.needs.goal;

import batchwright.needs.dynamics.BodyModel;
import batchwright.needs.evidence.Words;
import batchwright.person.Goal;
import batchwright.quantity.Energy;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * When a lower weight can be reached at the earliest, by one even intake, the least that is allowed now.
 *
 * @param least the intake
 * @param day empty when the weight is not reached within ten years
 * @param settledKg weight in the end
 */
public record EarliestDay(Goal.ReachWeight reach, Energy least, Optional<LocalDate> day, double settledKg) {
    static EarliestDay of(Goal.ReachWeight reach, LossLimit limit) {
        BodyModel model = limit.model();
        Energy least = limit.leastIntake(model.start());
        OptionalInt days = model.dayOf(reach.weight().kg(), least);
        return new EarliestDay(
                reach,
                least,
                days.isPresent() ? Optional.of(reach.from().plusDays(days.getAsInt())) : Optional.empty(),
                model.settled(least).weightKg());
    }

    /** A sentence. */
    public String says() {
        String kg = Words.plain(reach.weight().kg());
        return day.map(date -> kg + " kg would be reached on " + date + " at the earliest, by an even "
                        + Words.up(least.kcal()) + " kcal a day.")
                .orElseGet(() -> "An even " + Words.up(least.kcal()) + " kcal a day never leads to " + kg
                        + " kg: weight would settle near " + Words.whole(settledKg) + " kg.");
    }
}
