package batchwright.needs;

import java.util.Locale;

/** Numbers as people read them, the same in every locale; and rounding that floating-point noise cannot tip over. */
final class Words {
    /** Far below any printed digit, far above the noise of a few multiplications. */
    private static final double NOISE = 1e-9;

    private Words() {}

    static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    static String oneDecimal(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    static String twoDecimals(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** To the nearest ten, for what is known no better. */
    static String tens(double value) {
        return whole(Math.round(value / 10) * 10.0);
    }

    /** At most two decimals, none that are zero: 3, 1.6, 1.62. */
    static String plain(double value) {
        String text = twoDecimals(value);
        return text.replaceAll("\\.?0+$", "");
    }

    /** With its sign: +204, -500. */
    static String signed(double value) {
        return String.format(Locale.ROOT, "%+.0f", value);
    }

    /** A floor in whole units. */
    static int up(double value) {
        return (int) Math.ceil(value - NOISE);
    }

    /** A ceiling in whole units. */
    static int down(double value) {
        return (int) Math.floor(value + NOISE);
    }

    static boolean above(double value, double limit) {
        return value > limit + NOISE;
    }

    static boolean below(double value, double limit) {
        return value < limit - NOISE;
    }
}
