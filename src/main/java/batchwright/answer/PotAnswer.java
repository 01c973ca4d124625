package batchwright.answer;

import java.math.BigDecimal;
import java.util.List;

/**
 * A pot shared out as it came out.
 *
 * @param part of the dish that is in the pot
 * @param rawGrams what went in
 * @param cookedGrams what the pot holds
 * @param factorReckoned cooked / raw weight, by the dish
 * @param overGrams what is left in the pot, as no container may have more; below 0: what is missing
 */
public record PotAnswer(
        String dish,
        String part,
        BigDecimal rawGrams,
        BigDecimal cookedGrams,
        BigDecimal factorReckoned,
        List<PotFill> fills,
        BigDecimal overGrams) {
    public PotAnswer {
        fills = List.copyOf(fills);
    }

    /**
     * Containers that are alike.
     *
     * @param grams of the pot into each, and what was planned
     * @param kcal of each container as it is now, all parts counted, and what was planned
     * @param proteinG the same of protein
     */
    public record PotFill(String eater, int containers, Planned grams, Planned kcal, Planned proteinG) {}

    /** A figure as it came out, beside the one that was planned. */
    public record Planned(BigDecimal now, BigDecimal planned) {}
}
