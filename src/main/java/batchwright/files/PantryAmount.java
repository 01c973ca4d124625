package batchwright.files;

import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of a food is at home: {@code 600} or {@code 600 g}, {@code 1.5 kg}, or household measures, {@code 10 medium}. Grams
 * are as purchased; measures are edible grams, and what is thrown away is added to them.
 */
final class PantryAmount {
    private static final Pattern FORM = Pattern.compile("(\\S+)\\s+(\\S.*)");
    private static final Range GRAMS = Range.of("weight at home", "0", "100000", "g", "");
    private static final Range KILOGRAMS = Range.of("weight at home", "0", "100", "kg", "");
    private static final Range COUNT = Range.of("number of measures", "0", "1000", "", "");
    private static final BigDecimal GRAMS_PER_KG = BigDecimal.valueOf(1000);
    /** Less than this may have been meant as a number of pieces: an egg alone weighs twice as much. */
    private static final BigDecimal FEW_GRAMS = BigDecimal.valueOf(30);
    /** Measures that are no pieces begin so. */
    private static final Set<String> NO_PIECES =
            Set.of("cup", "tbsp", "tsp", "ounce", "pound", "handful", "scoop", "measure");

    private final Map<Food, List<Measure>> measures;
    private final Problems problems;

    PantryAmount(Map<Food, List<Measure>> measures, Problems problems) {
        this.measures = measures;
        this.problems = problems;
    }

    Optional<BigDecimal> asPurchased(Food food, Written written) {
        Matcher form = FORM.matcher(written.text());
        if (!form.matches()) {
            Optional<BigDecimal> grams = new Numbers(problems).decimal(written, GRAMS);
            grams.ifPresent(g -> warnOfPieces(food, g, written));
            return grams;
        }
        var number = new Written(form.group(1), written.at());
        return switch (form.group(2)) {
            case "g" -> new Numbers(problems).decimal(number, GRAMS);
            case "kg" -> new Numbers(problems).decimal(number, KILOGRAMS).map(GRAMS_PER_KG::multiply);
            default -> measured(food, number, new Written(form.group(2), written.at()));
        };
    }

    private List<Measure> measuresOf(Food food) {
        return measures.getOrDefault(food, List.of());
    }

    private Optional<BigDecimal> measured(Food food, Written number, Written name) {
        Optional<Measure> measure = measuresOf(food).stream()
                .filter(m -> m.name().equals(name.text()))
                .findFirst();
        if (measure.isEmpty()) {
            List<String> known = new ArrayList<>(List.of("g", "kg"));
            measuresOf(food).forEach(m -> known.add(m.name()));
            problems.unknown(
                    name,
                    "there is no measure of %s called %s".formatted(food, name.quoted()),
                    "expected an amount in " + String.join(" or ", known),
                    known);
            return Optional.empty();
        }
        return new Numbers(problems)
                .decimal(number, COUNT)
                .map(count -> count.multiply(measure.get().grams()).divide(food.edibleShare(), MathContext.DECIMAL64));
    }

    private void warnOfPieces(Food food, BigDecimal grams, Written written) {
        boolean few = grams.signum() > 0
                && grams.compareTo(FEW_GRAMS) < 0
                && grams.stripTrailingZeros().scale() <= 0;
        measuresOf(food).stream()
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
