package batchwright.needs.learning;

import batchwright.needs.NeedsCalculator;
import batchwright.person.Eater;
import batchwright.quantity.Energy;
import java.time.LocalDate;

/**
 * A figure that was adopted.
 *
 * @param holdsKcal energy a day that holds the weight, as it was taken from that day on
 */
public record TargetStep(LocalDate date, double holdsKcal) {
    /** An eater for whom it was adopted. */
    public Eater in(Eater asWritten) {
        return NeedsCalculator.holding(asWritten, new Energy(holdsKcal));
    }
}
