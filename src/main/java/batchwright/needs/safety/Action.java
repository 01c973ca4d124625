package batchwright.needs.safety;

import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.quantity.Energy;
import java.util.Locale;

/** What the weight is to do, as the tables of decisions put it. */
public enum Action {
    LOSE_SLOW,
    LOSE_USUAL,
    HOLD,
    GAIN_SLOW,
    GAIN_USUAL,
    GAIN_FAST;

    private static final double PER_CENT = 100;

    /**
     * Anything faster than what is planned counts as the fastest.
     *
     * @param total energy a day that holds the weight
     * @param kgAWeek change of weight; gain is positive
     * @param kcalADay surplus (positive) or deficit
     */
    public static Action of(Body body, Energy total, double kgAWeek, double kcalADay) {
        double percent = Math.abs(kgAWeek) / body.weight().kg() * PER_CENT;
        if (kgAWeek == 0) {
            return HOLD;
        }
        return kgAWeek < 0 ? loss(percent) : gain(body, total, percent, kgAWeek, kcalADay);
    }

    private static Action loss(double percent) {
        return Numerals.above(percent, SafetyFigure.LOSS_PERCENT_A_WEEK_SLOW.value()) ? LOSE_USUAL : LOSE_SLOW;
    }

    private static Action gain(Body body, Energy total, double percent, double kgAWeek, double kcalADay) {
        if (SafeChange.ofUsualGain(body, total).isExceededBy(kgAWeek, kcalADay)) {
            return GAIN_FAST;
        }
        return Numerals.above(percent, SafetyFigure.GAIN_PERCENT_A_WEEK_SLOW.value()) ? GAIN_USUAL : GAIN_SLOW;
    }

    /** As the tables write it. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean gains() {
        return compareTo(HOLD) > 0;
    }
}
