package batchwright.needs.safety;

import batchwright.needs.evidence.Numerals;
import batchwright.person.Body;
import batchwright.quantity.Energy;

/**
 * The fastest change of weight that is planned, either way, as numbers without sign. Both figures hold; an infinite one is no limit.
 *
 * @param kgAWeek most change of weight
 * @param kcalADay most deficit or surplus
 */
public record SafeChange(double kgAWeek, double kcalADay) {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    private static final double PER_CENT = 100;
    private static final double OLDER_YEARS = 65;
    private static final double UNDERWEIGHT_BMI = 18.5;
    private static final double OBESE_BMI = 30;

    /** @param total energy a day that holds the weight */
    public static SafeChange ofLoss(Body body, Energy total) {
        SafeChange most = ofLossAtAnyTotal(body);
        return new SafeChange(
                most.kgAWeek,
                Math.min(most.kcalADay, SafetyFigure.LOSS_PERCENT_OF_TOTAL.value() / PER_CENT * total.kcal()));
    }

    /** What may be asked for: the part of the total does not count. */
    public static SafeChange ofLossAtAnyTotal(Body body) {
        return new SafeChange(
                Math.min(SafetyFigure.LOSS_KG_A_WEEK.value(), percent(SafetyFigure.LOSS_PERCENT_A_WEEK, body)),
                body.ageYears() < OLDER_YEARS
                        ? SafetyFigure.LOSS_KCAL_A_DAY.value()
                        : SafetyFigure.LOSS_KCAL_A_DAY_FROM_65.value());
    }

    /**
     * Underweight people start in steps, because a jump of intake can be dangerous (refeeding); obese people gain mostly fat.
     *
     * @param total energy a day that holds the weight
     */
    public static SafeChange ofGain(Body body, Energy total) {
        double kg = percent(SafetyFigure.GAIN_PERCENT_A_WEEK, body);
        if (Numerals.below(body.bmi(), UNDERWEIGHT_BMI)) {
            return new SafeChange(kg, SafetyFigure.GAIN_KCAL_A_DAY.value());
        }
        return new SafeChange(kg, Numerals.below(body.bmi(), OBESE_BMI) ? NO_LIMIT : surplus(total));
    }

    /** The fastest gain that is still usual: faster is mostly fat. */
    static SafeChange ofUsualGain(Body body, Energy total) {
        return new SafeChange(percent(SafetyFigure.GAIN_PERCENT_A_WEEK_USUAL, body), surplus(total));
    }

    private static double surplus(Energy total) {
        return Math.min(
                SafetyFigure.GAIN_KCAL_A_DAY.value(),
                SafetyFigure.GAIN_PERCENT_OF_TOTAL.value() / PER_CENT * total.kcal());
    }

    private static double percent(SafetyFigure figure, Body body) {
        return figure.value() / PER_CENT * body.weight().kg();
    }

    /**
     * Whether a change is faster than this.
     *
     * @param kgAWeek change of weight; its sign does not count
     * @param kcalADay deficit or surplus; its sign does not count
     */
    public boolean isExceededBy(double kgAWeek, double kcalADay) {
        return Numerals.above(Math.abs(kgAWeek), this.kgAWeek) || Numerals.above(Math.abs(kcalADay), this.kcalADay);
    }
}
