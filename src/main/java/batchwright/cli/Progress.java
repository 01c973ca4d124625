package batchwright.cli;

import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;

/** How far a search has come, in less than 80 columns. */
final class Progress {
    private static final BigDecimal PER_CENT = BigDecimal.valueOf(100);

    private Progress() {}

    /**
     * @param best cost of the cheapest plan so far
     * @param bound no plan costs less
     * @param currency of both
     * @param stopping whether somebody pressed Ctrl-C
     */
    static String says(
            Duration elapsed, Optional<Money> best, Optional<Money> bound, Currency currency, boolean stopping) {
        String after = elapsed.toSeconds() + " s: ";
        if (stopping) {
            return after + "stopping with the best so far; Ctrl-C again quits";
        }
        String found = best.map(cost -> "best so far " + currency.text(cost)).orElse("no plan yet");
        String proven = bound.map(least -> ", proven: none below " + currency.text(least))
                .orElse("");
        String apart = best.flatMap(cost -> bound.filter(least -> least.minor() > 0)
                        .map(least -> ", difference " + percent(cost, least) + " %"))
                .orElse("");
        return after + found + proven + apart;
    }

    /** By how much the cost is above the bound. */
    private static BigDecimal percent(Money cost, Money bound) {
        return BigDecimal.valueOf(cost.minor() - bound.minor())
                .multiply(PER_CENT)
                .divide(BigDecimal.valueOf(bound.minor()), 1, RoundingMode.HALF_UP);
    }
}
