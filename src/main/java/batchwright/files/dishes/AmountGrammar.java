package batchwright.files.dishes;

import batchwright.files.foods.MeasureNames;
import batchwright.files.value.FractionSigns;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.Weights;
import batchwright.food.Food;
import batchwright.food.MeasureName;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of a food: a weight, {@code 150 g}, {@code 1.2 kg}, {@code 2 lb} or {@code 6 oz}; or its household measures, {@code 2 tbsp}, {@code 1 1/2
 * cups}, {@code 3 medium}. What one measure weighs is in foods/measures.csv.
 */
public final class AmountGrammar {
    static final String EXAMPLE = "a weight or a measure, and perhaps a method: 100 g, or 1 1/2 cups, or 100 g, boiled";
    private static final List<String> WEIGHTS = List.of("g", "kg");
    private static final NumberRange GRAMS =
            NumberRange.of("weight", "0.1", "100000", "g", "only the proportions count");
    /** In kg, lb or oz. */
    private static final NumberRange LARGER =
            NumberRange.of("weight", "0.001", "100", "", "only the proportions count");

    private static final NumberRange COUNT = NumberRange.of("count", "0.01", "1000", "", "only the proportions count");

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("([-+]?(?:[0-9]+\\s+)?[0-9]+/[0-9]+|[-+]?[0-9.,]+(?:[eE][0-9]+)?)\\s*(.*)");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,3})\\s+)?(\\d{1,2})/(\\d{1,2})");
    private static final Pattern WORDS = Pattern.compile("[a-zA-Z][a-zA-Z0-9% _-]{0,39}");
    /** Spoons and cups are not divided further. */
    private static final int MOST_PARTS = 16;

    private final MeasureNames measures;
    private final Problems problems;

    public AmountGrammar(MeasureNames measures, Problems problems) {
        this.measures = measures;
        this.problems = problems;
    }

    /**
     * An amount.
     *
     * @param grams edible grams
     * @param measured the measures as written, such as 1 1/2 cups; empty for a weight
     */
    record Amount(BigDecimal grams, Optional<String> measured) {}

    /** @param food empty when its name is not known, which was told already: then only the form is checked */
    Optional<Amount> read(Optional<Food> food, Written written) {
        Matcher form = NUMBER_AND_UNIT.matcher(FractionSigns.spelledOut(written.text()));
        if (!form.matches()) {
            return wrong(written, written.quoted() + " has no number in front");
        }
        var number = new Written(form.group(1), written.at());
        var unit = new Written(form.group(2), written.at());
        if (unit.isEmpty()) {
            return wrong(written, written.quoted() + " has no unit");
        }
        if (!WORDS.matcher(unit.text()).matches()) {
            return wrong(written, written.quoted() + " is not a number with a unit");
        }
        if (Weights.isUnit(unit.text())) {
            return number(number, unit.text().equals("g") ? GRAMS : LARGER)
                    .map(n -> new Amount(Weights.inGrams(n, unit.text()), Optional.empty()));
        }
        return number(number, COUNT).flatMap(n -> food.flatMap(f -> measured(f, n, number.text(), unit)));
    }

    private Optional<Amount> measured(Food food, BigDecimal count, String number, Written unit) {
        return measures.find(food, unit, WEIGHTS)
                .map(m -> new Amount(
                        m.grams().multiply(count, MathContext.DECIMAL64),
                        Optional.of(number.replaceAll("\\s+", " ") + " " + MeasureName.of(count, m.name()))));
    }

    private Optional<BigDecimal> number(Written number, NumberRange range) {
        if (number.text().indexOf('/') < 0) {
            return new Numbers(problems).decimal(number, range);
        }
        Matcher parts = FRACTION.matcher(number.text());
        if (!parts.matches() || !isProper(parts)) {
            problems.error(
                    number,
                    number.quoted() + " is not a fraction below 1",
                    "expected a fraction such as 1/2 or 2/3, or one behind a whole number: 1 1/4");
            return Optional.empty();
        }
        BigDecimal whole = parts.group(1) == null ? BigDecimal.ZERO : new BigDecimal(parts.group(1));
        BigDecimal parted =
                new BigDecimal(parts.group(2)).divide(new BigDecimal(parts.group(3)), MathContext.DECIMAL128);
        BigDecimal all = whole.add(parted);
        if (!range.holds(all)) {
            problems.error(number, range.wrong(all.round(MathContext.DECIMAL32)), range.expected());
            return Optional.empty();
        }
        return Optional.of(all);
    }

    private static boolean isProper(Matcher parts) {
        int above = Integer.parseInt(parts.group(2));
        int below = Integer.parseInt(parts.group(3));
        return above > 0 && above < below && below <= MOST_PARTS;
    }

    private <T> Optional<T> wrong(Written written, String wrong) {
        problems.error(written, wrong, "expected " + EXAMPLE);
        return Optional.empty();
    }
}
