package batchwright.files;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How US labels round per serving: FDA, Food Labeling Guide, Appendix H. The text is as on the label; the step is how far
 * the true amount may be from it, to either side or above "less than 1".
 */
record LabelRounding(String text, double mostOff) {
    private static final double SMALLEST_FAT = 0.5;

    static LabelRounding calories(double kcal) {
        return kcal < 5 ? zero(5) : nearest(kcal, kcal <= 50 ? 5 : 10);
    }

    static LabelRounding fat(double grams) {
        return grams < SMALLEST_FAT ? zero(SMALLEST_FAT) : nearest(grams, grams < 5 ? SMALLEST_FAT : 1);
    }

    /** Carbohydrate, fibre, sugar and protein. */
    static LabelRounding grams(double grams) {
        if (grams < 0.5) {
            return zero(0.5);
        }
        return grams < 1 ? new LabelRounding("<1", 1) : nearest(grams, 1);
    }

    static LabelRounding sodium(double mg) {
        return mg < 5 ? zero(5) : nearest(mg, mg <= 140 ? 5 : 10);
    }

    private static LabelRounding zero(double below) {
        return new LabelRounding("0", below);
    }

    private static LabelRounding nearest(double value, double step) {
        BigDecimal by = BigDecimal.valueOf(step);
        BigDecimal steps = BigDecimal.valueOf(value).divide(by, 0, RoundingMode.HALF_UP);
        String text = steps.multiply(by).stripTrailingZeros().toPlainString();
        return new LabelRounding(text, step / 2);
    }
}
