package batchwright.files.shop;

import batchwright.files.foods.MeasureNames;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.Weights;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of a food is at home: {@code 600} or {@code 600 g}, {@code 1.5 kg}, {@code 2 lb}, or household measures, {@code 10
 * medium}. Weights are as purchased; measures are edible grams, and what is thrown away is added to them.
 */
final class PantryAmount {
    private static final Pattern FORM = Pattern.compile("(\\S*?[0-9.,])\\s*([a-zA-Z].*)");
    private static final NumberRange GRAMS = NumberRange.of("weight at home", "0", "100000", "g", "");
    private static final NumberRange COUNT = NumberRange.of("number of measures", "0", "1000", "", "");
    private static final List<String> UNITS = List.of("g", "kg");
    /** Less than this may have been meant as a number of pieces: an egg alone weighs twice as much. */
    private static final BigDecimal FEW_GRAMS = BigDecimal.valueOf(30);
    /** Measures that are no pieces begin so. */
    private static final Set<String> NO_PIECES =
            Set.of("cup", "tbsp", "tsp", "ounce", "pound", "handful", "scoop", "measure");

    private final MeasureNames measures;
    private final Problems problems;

    PantryAmount(MeasureNames measures, Problems problems) {
        this.measures = measures;
        this.problems = problems;
    }

    /** @param food empty when its name is not known, which was told already: then only the form is checked */
    Optional<BigDecimal> asPurchased(Optional<Food> food, Written written) {
        Matcher form = FORM.matcher(written.text());
        if (!form.matches()) {
            Optional<BigDecimal> grams = new Numbers(problems).decimal(written, GRAMS);
            food.ifPresent(f -> grams.ifPresent(g -> warnOfPieces(f, g, written)));
            return grams;
        }
        var number = new Written(form.group(1), written.at());
        var unit = new Written(form.group(2), written.at());
        if (Weights.isUnit(unit.text())) {
            return new Weights(problems).grams(number, unit.text(), GRAMS);
        }
        Optional<BigDecimal> count = new Numbers(problems).decimal(number, COUNT);
        return food.flatMap(f -> measures.find(f, unit, UNITS).flatMap(m -> count.map(n -> asPurchased(f, m, n))));
    }

    private static BigDecimal asPurchased(Food food, Measure measure, BigDecimal count) {
        return count.multiply(measure.grams()).divide(food.edibleShare(), MathContext.DECIMAL64);
    }

    private void warnOfPieces(Food food, BigDecimal grams, Written written) {
        boolean few = grams.signum() > 0
                && grams.compareTo(FEW_GRAMS) < 0
                && grams.stripTrailingZeros().scale() <= 0;
        measures.byFood().getOrDefault(food, List.of()).stream()
                .map(Measure::name)
                .filter(name -> few && !NO_PIECES.contains(name.split(" ", 2)[0]))
                .findFirst()
                .ifPresent(name -> problems.warning(
                        written.at(),
                        "%s is read as %s g of %s".formatted(written.text(), written.text(), food),
                        "for pieces write %s %s; for grams write %s g"
                                .formatted(written.text(), name, written.text())));
    }
}
