package batchwright.report.labels;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.report.labels.LabelRounding.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Rounding of a US label: 21 CFR 101.9(c). Calories (c)(1): below 5 are 0, up to 50 to the nearest 5, above to the nearest 10. Fat
 * (c)(2): below 0.5 g is 0, below 5 g to the nearest 0.5 g, else to the nearest 1 g. Carbohydrate, fibre and protein (c)(6), (c)(7):
 * below 0.5 g is 0, below 1 g "less than 1 g", else to the nearest 1 g. A half is rounded up. Carbohydrate includes fibre.
 */
final class UsLabelRounding implements LabelRounding.Rules {
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal FIVE = BigDecimal.valueOf(5);
    private static final BigDecimal FIFTY = BigDecimal.valueOf(50);

    @Override
    public String says() {
        return "rounded by 21 CFR 101.9 (USA)";
    }

    @Override
    public String tag() {
        return "21 CFR 101.9";
    }

    @Override
    public List<Figure> of(Nutrients container) {
        return List.of(
                new Figure("energy", calories(container.get(Nutrient.ENERGY)) + " kcal"),
                new Figure("protein", grams(container.get(Nutrient.PROTEIN))),
                new Figure("carbohydrate", grams(container.get(Nutrient.CARBOHYDRATE))),
                new Figure("fat", fat(container.get(Nutrient.FAT))),
                new Figure("fibre", grams(container.get(Nutrient.FIBRE))));
    }

    static String calories(BigDecimal kcal) {
        if (kcal.compareTo(FIVE) < 0) {
            return "0";
        }
        return nearest(kcal, kcal.compareTo(FIFTY) <= 0 ? FIVE : BigDecimal.TEN);
    }

    static String fat(BigDecimal grams) {
        if (grams.compareTo(HALF) < 0) {
            return "0 g";
        }
        return nearest(grams, grams.compareTo(FIVE) < 0 ? HALF : BigDecimal.ONE) + " g";
    }

    /** Of carbohydrate, fibre and protein. */
    static String grams(BigDecimal grams) {
        if (grams.compareTo(HALF) < 0) {
            return "0 g";
        }
        return grams.compareTo(BigDecimal.ONE) < 0 ? "less than 1 g" : nearest(grams, BigDecimal.ONE) + " g";
    }

    private static String nearest(BigDecimal value, BigDecimal step) {
        BigDecimal rounded =
                value.divide(step, 0, RoundingMode.HALF_UP).multiply(step).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
