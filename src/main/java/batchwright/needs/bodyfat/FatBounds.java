package batchwright.needs.bodyfat;

import batchwright.quantity.Share;

/** What body fat can be, with room on both sides [% of body weight]: a formula that answers otherwise was given a slip. */
final class FatBounds {
    private static final double LEAST_PERCENT = 3;
    private static final double MOST_PERCENT = 60;

    private FatBounds() {}

    static boolean hold(double percent) {
        return percent >= LEAST_PERCENT && percent <= MOST_PERCENT;
    }

    static Share nearest(double percent) {
        return Share.ofPercent(Math.max(LEAST_PERCENT, Math.min(MOST_PERCENT, percent)));
    }
}
