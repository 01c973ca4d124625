package batchwright.food;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Some of a food at home.
 *
 * @param grams as purchased
 * @param useBy the last day on which it may be used; empty: it keeps longer than any plan
 */
public record Lot(BigDecimal grams, Optional<LocalDate> useBy) {
    /** A lot without a date. */
    public static Lot of(BigDecimal grams) {
        return new Lot(grams, Optional.empty());
    }

    /** Whether it may still be used on this day. */
    public boolean keepsUntil(LocalDate day) {
        return useBy.map(last -> !last.isBefore(day)).orElse(true);
    }
}
