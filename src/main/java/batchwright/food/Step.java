package batchwright.food;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One step of a dish's method, in the order of work.
 *
 * @param text what to do
 * @param minutes how long, for about {@link #FOR_CONTAINERS} containers
 * @param handsOn takes the cook's hands all the time
 * @param appliance what it occupies
 * @param celsius oven temperature, when the oven is used
 * @param dayBefore done the evening before the cooking day: soaking, thawing, marinating
 */
public record Step(
        String text,
        int minutes,
        boolean handsOn,
        Optional<Appliance> appliance,
        OptionalInt celsius,
        boolean dayBefore) {
    /** What minutes, pots and trays are meant for: one eater and a working week. A choice; a dish need not say it. */
    public static final int FOR_CONTAINERS = 5;

    /** What a step occupies besides the cook. */
    public enum Appliance {
        BURNER,
        OVEN
    }
}
