package batchwright.files.foods;

import static batchwright.food.Nutrient.CARBOHYDRATE;
import static batchwright.food.Nutrient.FAT;
import static batchwright.food.Nutrient.FIBRE;
import static batchwright.food.Nutrient.PROTEIN;
import static batchwright.food.Nutrient.SUGAR;
import static batchwright.food.Nutrient.WATER;

import batchwright.files.table.TableRow;
import batchwright.files.value.Problems;
import batchwright.food.Nutrient;
import java.math.BigDecimal;
import java.util.Map;

/**
 * Whether water and sugar leave room for the other figures of a food. Tables measure them in other samples and work
 * carbohydrate out as what remains, so that the limits lie just beyond the extremes of the 8,789 foods of USDA SR28.
 */
final class Proximates {
    /** In SR28 the sum with water is up to 104.7 g in 100 g. */
    /** Protein, fat and carbohydrate in 100 g, with some rounding. */
    private static final BigDecimal MACROS = new BigDecimal("100.5");

    private static final BigDecimal MOST_WITH_WATER = new BigDecimal("105");
    /** In SR28 sugar is up to 0.94 g more than carbohydrate. */
    private static final BigDecimal SUGAR_TOLERANCE = BigDecimal.ONE;
    /** In SR28 sugar and fibre together are up to 3.3 g more than carbohydrate. */
    private static final BigDecimal SUGAR_AND_FIBRE_TOLERANCE = new BigDecimal("3.5");

    private final TableRow row;
    private final Map<Nutrient, BigDecimal> values;
    private final Problems problems;

    Proximates(TableRow row, Map<Nutrient, BigDecimal> values, Problems problems) {
        this.row = row;
        this.values = values;
        this.problems = problems;
    }

    void check() {
        water();
        if (values.containsKey(CARBOHYDRATE)) {
            sugar();
        }
    }

    private void water() {
        BigDecimal macros = grams(PROTEIN).add(grams(FAT)).add(grams(CARBOHYDRATE));
        BigDecimal sum = macros.add(grams(WATER));
        boolean macrosFit = macros.compareTo(MACROS) <= 0;
        if (macrosFit && sum.compareTo(MOST_WITH_WATER) > 0) {
            problems.error(
                    row.cell(WATER.tagname()),
                    "water, protein, fat and carbohydrate together are %s g in 100 g".formatted(sum.toPlainString()),
                    "expected about 100 g at most: look for a point in the wrong place");
        }
    }

    private void sugar() {
        BigDecimal carbohydrate = grams(CARBOHYDRATE);
        BigDecimal sugarAndFibre = grams(SUGAR).add(grams(FIBRE));
        if (grams(SUGAR).compareTo(carbohydrate.add(SUGAR_TOLERANCE)) > 0) {
            problems.error(
                    row.cell(SUGAR.tagname()),
                    "sugar %s g is more than carbohydrate %s g".formatted(grams(SUGAR), carbohydrate),
                    "expected at most %s g: carbohydrate includes sugar".formatted(carbohydrate));
        } else if (grams(FIBRE).compareTo(carbohydrate) <= 0
                && sugarAndFibre.compareTo(carbohydrate.add(SUGAR_AND_FIBRE_TOLERANCE)) > 0) {
            problems.warning(
                    row.cell(CARBOHYDRATE.tagname()).at(),
                    "sugar and fibre together are %s g, carbohydrate is %s g".formatted(sugarAndFibre, carbohydrate),
                    "expected carbohydrate with its fibre: labels in the EU state it without, so add the fibre");
        }
    }

    /** Unknown counts as none, which only makes the check milder. */
    private BigDecimal grams(Nutrient nutrient) {
        return values.getOrDefault(nutrient, BigDecimal.ZERO);
    }
}
