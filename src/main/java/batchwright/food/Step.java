package batchwright.food;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One step of a dish's method, in the order of work.
 *
 * @param text what to do
 * @param minutes how long, for about {@link #FOR_CONTAINERS} containers
 * @param handsOnMinutes the first of these minutes that take the cook's hands; the rest goes on by itself
 * @param appliance what it occupies
 * @param celsius oven temperature, when the oven is used
 * @param shelves of the oven it fills, when the oven is used; 1 otherwise
 * @param after numbers of the steps that must be done, the first step being 1; only earlier ones
 * @param fills puts the dish into its containers
 * @param dayBefore done the evening before the cooking day: soaking, thawing, marinating
 * @param parts names of the dish's parts that it is for: it falls away when no container has any of them; empty when it never does
 */
public record Step(
        String text,
        int minutes,
        int handsOnMinutes,
        Optional<Appliance> appliance,
        OptionalInt celsius,
        int shelves,
        List<Integer> after,
        boolean fills,
        boolean dayBefore,
        List<String> parts) {
    /** What minutes, pots and trays are meant for: one eater and a working week. A choice; a dish need not say it. */
    public static final int FOR_CONTAINERS = 5;

    /** What a step occupies besides the cook. */
    public enum Appliance {
        BURNER,
        OVEN
    }

    public Step {
        after = List.copyOf(after);
        parts = List.copyOf(parts);
        if (handsOnMinutes < 0 || handsOnMinutes > minutes) {
            throw new IllegalArgumentException(
                    "handsOnMinutes (" + handsOnMinutes + ") must be 0 to minutes (" + minutes + ").");
        }
    }

    /** A step that never falls away. */
    public Step(
            String text,
            int minutes,
            int handsOnMinutes,
            Optional<Appliance> appliance,
            OptionalInt celsius,
            int shelves,
            List<Integer> after,
            boolean fills,
            boolean dayBefore) {
        this(text, minutes, handsOnMinutes, appliance, celsius, shelves, after, fills, dayBefore, List.of());
    }

    /** Whether it takes the cook's hands all the time. */
    public boolean handsOn() {
        return handsOnMinutes == minutes;
    }
}
