package batchwright.audit;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * When two recomputed amounts count as the same: a millionth of the unit (kcal, g, mg). Amounts are decimal, so sums and
 * products are exact; only a division (one third of a mix, a pack with refuse) is cut off, here after 34 digits and in the
 * plan after 16. A millionth is far above that and far below anything that a kitchen scale or a label can show.
 */
final class Tolerance {
    static final BigDecimal OF_A_UNIT = new BigDecimal("0.000001");
    static final MathContext DIGITS = MathContext.DECIMAL128;

    private Tolerance() {}

    static boolean same(BigDecimal a, BigDecimal b) {
        return a.subtract(b).abs().compareTo(OF_A_UNIT) <= 0;
    }

    /** Whether a is clearly less than b. */
    static boolean less(BigDecimal a, BigDecimal b) {
        return b.subtract(a).compareTo(OF_A_UNIT) > 0;
    }
}
