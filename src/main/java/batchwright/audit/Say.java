package batchwright.audit;

import batchwright.plan.Day;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers and places as sentences say them; never in the words of a locale. */
final class Say {
    private static final int MOST_DECIMALS = 6;

    private Say() {}

    static String day(Seat seat, Day day) {
        return seat.eater().name() + ", day " + day.day();
    }

    /** "97.5 g, at least 100 g": as few decimals as still show that the two differ. */
    static String against(BigDecimal found, String limit, BigDecimal bound, String unit) {
        int decimals = 0;
        while (decimals < MOST_DECIMALS && round(found, decimals).compareTo(round(bound, decimals)) == 0) {
            decimals++;
        }
        return number(found, decimals) + " " + unit + ", " + limit + " " + number(bound, decimals) + " " + unit;
    }

    private static BigDecimal round(BigDecimal amount, int decimals) {
        return amount.setScale(decimals, RoundingMode.HALF_EVEN);
    }

    private static String number(BigDecimal amount, int decimals) {
        BigDecimal rounded = round(amount, decimals);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
