package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A snack: how many pieces of which items, and what they add up to (exactly).
 *
 * @param counts pieces by item code, at least 1 each, in alphabetical order of the codes; unmodifiable
 * @param energyKcal energy of all pieces [kcal]
 * @param proteinG protein of all pieces [g]
 * @param grams weight of all pieces [g]
 * @param cost cost of all pieces [minor units of the currency]
 * @param pieces number of pieces
 * @param overKcal energy above the calorie gap [kcal] (above 0 when there was none); negative when the snack is short
 */
public record SnackAnswer(
        Map<String, Integer> counts,
        BigDecimal energyKcal,
        BigDecimal proteinG,
        BigDecimal grams,
        BigDecimal cost,
        int pieces,
        BigDecimal overKcal) {

    /** Keeps its own copy of the counts, in the order given. */
    public SnackAnswer {
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }
}
