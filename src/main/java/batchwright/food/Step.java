package batchwright.food;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One step of a dish's method, in the order of work.
 *
 * @param text what to do
 * @param minutes how long
 * @param handsOn takes the cook's hands all the time
 * @param appliance what it occupies
 * @param celsius oven temperature, when the oven is used
 */
public record Step(String text, int minutes, boolean handsOn, Optional<Appliance> appliance, OptionalInt celsius) {
    /** What a step occupies besides the cook. */
    public enum Appliance {
        BURNER,
        OVEN
    }
}
