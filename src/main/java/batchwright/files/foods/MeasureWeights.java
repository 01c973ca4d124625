package batchwright.files.foods;

import batchwright.files.value.Problems;
import batchwright.food.Measure;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;

/**
 * Warns when a measure whose size is known weighs what no food does. Limits are a little wider than USDA SR28 (15,438
 * measures), dried herbs and freeze-dried foods aside: a cup of popcorn weighs 8 g, of corn syrup 341 g; a spoon of dried basil
 * 2.1 g, of honey 21 g.
 */
final class MeasureWeights {
    private static final List<MeasureWeights> ALL = List.of(
            new MeasureWeights("cup", "5", "400", "a cup is about 240 ml"),
            new MeasureWeights("tbsp", "1", "30", "a tablespoon is about 15 ml"),
            new MeasureWeights("tsp", "0.3", "10", "a teaspoon is about 5 ml"),
            new MeasureWeights("ounce", "28", "30", "an ounce is 28.35 g"),
            new MeasureWeights("pound", "450", "460", "a pound is 453.6 g"));

    private final String unit;
    private final BigDecimal least;
    private final BigDecimal most;
    private final String size;

    private MeasureWeights(String unit, String least, String most, String size) {
        this.unit = unit;
        this.least = new BigDecimal(least);
        this.most = new BigDecimal(most);
        this.size = size;
    }

    /** @param grams where the weight stands */
    static void check(Measure measure, Written grams, Problems problems) {
        ALL.stream()
                .filter(known -> known.isMeant(measure.name()))
                .forEach(known -> known.compare(measure, grams, problems));
    }

    /** "cup of shreds" is a cup too. */
    private boolean isMeant(String name) {
        return name.equals(unit) || name.startsWith(unit + " ");
    }

    private void compare(Measure measure, Written grams, Problems problems) {
        if (measure.grams().compareTo(least) < 0 || measure.grams().compareTo(most) > 0) {
            problems.warning(
                    grams.at(),
                    "1 %s of %s would weigh %s g".formatted(measure.name(), measure.food(), grams.text()),
                    "expected %s g to %s g: %s".formatted(least, most, size));
        }
    }
}
