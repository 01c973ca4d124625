package batchwright.report.labels;

import batchwright.food.Nutrient;
import batchwright.food.Nutrients;
import batchwright.report.labels.LabelRounding.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Figures of an EU label. Energy by the factors of Regulation (EU) 1169/2011, Annex XIV: protein and carbohydrate 17 kJ (4 kcal),
 * fat 37 kJ (9 kcal), fibre 8 kJ (2 kcal) per gram; carbohydrate without fibre. Rounding by the Commission's guidance on tolerances
 * of December 2012 (from memory): energy to the nearest 1; grams from 10 up to the nearest 1, above 0.5 to the nearest 0.1, others
 * 0. A half is rounded up.
 */
final class EuLabelRounding implements LabelRounding.Rules {
    private static final BigDecimal LEAST = new BigDecimal("0.5");

    @Override
    public String says() {
        return "by the factors of Regulation (EU) 1169/2011, rounded by the EU guidance of 2012";
    }

    @Override
    public String tag() {
        return "EU rounding";
    }

    @Override
    public List<Figure> of(Nutrients container) {
        return List.of(
                new Figure("energy", energy(container)),
                new Figure("fat", grams(container.get(Nutrient.FAT))),
                new Figure("carbohydrate", grams(available(container))),
                new Figure("fibre", grams(container.get(Nutrient.FIBRE))),
                new Figure("protein", grams(container.get(Nutrient.PROTEIN))));
    }

    /** Without fibre; never below 0, as tables are not exact. */
    private static BigDecimal available(Nutrients container) {
        return container
                .get(Nutrient.CARBOHYDRATE)
                .subtract(container.get(Nutrient.FIBRE))
                .max(BigDecimal.ZERO);
    }

    private static String energy(Nutrients container) {
        return whole(sum(container, 17, 37, 8)) + " kJ / " + whole(sum(container, 4, 9, 2)) + " kcal";
    }

    private static BigDecimal sum(Nutrients container, int perGram, int perGramFat, int perGramFibre) {
        return container
                .get(Nutrient.PROTEIN)
                .add(available(container))
                .multiply(BigDecimal.valueOf(perGram))
                .add(container.get(Nutrient.FAT).multiply(BigDecimal.valueOf(perGramFat)))
                .add(container.get(Nutrient.FIBRE).multiply(BigDecimal.valueOf(perGramFibre)));
    }

    static String grams(BigDecimal grams) {
        if (grams.compareTo(LEAST) <= 0) {
            return "0 g";
        }
        BigDecimal tenth = grams.setScale(1, RoundingMode.HALF_UP);
        return (tenth.compareTo(BigDecimal.TEN) >= 0 ? whole(grams) : tenth.toPlainString()) + " g";
    }

    private static String whole(BigDecimal value) {
        return value.setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
