package batchwright.solve.snack;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

/**
 * What a snack has to do.
 *
 * @param energyKcal the calorie gap to close [kcal]; zero or less means there is none, and the empty snack closes it
 * @param proteinG least protein [g], at least 0
 * @param budget most the snack may cost, at least 0 [minor units of the currency]; empty for no limit
 * @param mostKcal most energy [kcal], at least 0 and at least {@code energyKcal}; empty for no limit
 * @param mostKinds most different items, at least 0; {@link #NO_LIMIT} for no limit
 * @param smallest what "smallest" means
 * @param answers how many answers are wanted, at least 1
 */
public record SnackAsk(
        BigDecimal energyKcal,
        BigDecimal proteinG,
        Optional<BigDecimal> budget,
        Optional<BigDecimal> mostKcal,
        int mostKinds,
        Smallest smallest,
        int answers) {

    /** As many kinds as you like. */
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    /** @throws IllegalArgumentException when a figure is out of the range given above */
    public SnackAsk {
        Objects.requireNonNull(energyKcal, "energyKcal");
        Objects.requireNonNull(smallest, "smallest");
        Check.notNegative("proteinG", proteinG);
        budget.ifPresent(money -> Check.notNegative("budget", money));
        mostKcal.ifPresent(kcal -> Check.notNegative("mostKcal", kcal));
        Check.atLeast("mostKinds", mostKinds, 0);
        Check.atLeast("answers", answers, 1);
        if (mostKcal.isPresent() && mostKcal.get().compareTo(energyKcal) < 0) {
            throw new IllegalArgumentException("mostKcal (" + mostKcal.get().toPlainString()
                    + ") must be at least energyKcal (" + energyKcal.toPlainString() + ").");
        }
    }

    /** The energy a snack must have [kcal]: the calorie gap, or 0 when there is none. */
    public BigDecimal leastKcal() {
        return energyKcal.max(BigDecimal.ZERO);
    }
}
