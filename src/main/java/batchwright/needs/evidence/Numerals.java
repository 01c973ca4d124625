package batchwright.needs.evidence;

import java.util.Locale;

/** Numbers as people read them, the same in every locale; and rounding that floating-point noise cannot tip over. */
public final class Numerals {
    /** Far below any printed digit, far above the noise of a few multiplications. */
    private static final double NOISE = 1e-9;

    private Numerals() {}

    public static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    public static String oneDecimal(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    public static String twoDecimals(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    /** To the nearest ten, for what is not known any better. */
    public static String tens(double value) {
        return whole(Math.round(value / 10) * 10.0);
    }

    /** At most two decimals, none that are zero: 3, 1.6, 1.62. */
    public static String plain(double value) {
        String text = twoDecimals(value);
        return text.replaceAll("\\.?0+$", "");
    }

    /** A PAL: at most three decimals, as common practice has them (1.375), none that are zero. */
    public static String pal(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    }

    /** With its sign: +204, -500. */
    public static String signed(double value) {
        return String.format(Locale.ROOT, "%+.0f", value);
    }

    /** A floor in whole units. */
    public static int up(double value) {
        return (int) Math.ceil(value - NOISE);
    }

    /** A ceiling in whole units. */
    public static int down(double value) {
        return (int) Math.floor(value + NOISE);
    }

    public static boolean above(double value, double limit) {
        return value > limit + NOISE;
    }

    public static boolean below(double value, double limit) {
        return value < limit - NOISE;
    }
}
