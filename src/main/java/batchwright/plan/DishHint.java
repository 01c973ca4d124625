package batchwright.plan;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What is possible where a {@link DishRequest} is not: one thing asked differently, all else as asked.
 *
 * @param what name of the part or food it is about; empty when it is about neither
 * @param reached the figure that can be reached, in the kind's unit, not rounded; 0 for a kind without one
 * @param tryThis the request that asks so, which has an answer; empty when no request does
 */
public record DishHint(Kind kind, String what, BigDecimal reached, Optional<DishRequest> tryThis) {
    /** What is asked differently. */
    public enum Kind {
        /** The least energy above the band [kcal]. */
        ENERGY_ABOVE,
        /** The most energy below the band [kcal]. */
        ENERGY_BELOW,
        /** The most protein [g]. */
        MOST_PROTEIN,
        /** The most protein without the budget, where that is more [g]. */
        MOST_PROTEIN_FOR_MORE,
        /** The least fat [g]. */
        LEAST_FAT,
        /** The part may again be left out, or be in. */
        PART_FREE,
        /** The least budget [minor units]. */
        BUDGET,
        /** The most containers. */
        CONTAINERS,
        /** A food that is not sold and too little of it at home; nothing to ask differently. */
        NOT_SOLD,
        /** The energy nearest to the band whatever the protein and fat [kcal], with as much protein as it has. */
        NEAREST
    }
}
