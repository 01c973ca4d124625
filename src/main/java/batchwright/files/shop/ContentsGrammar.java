package batchwright.files.shop;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.files.value.Weights;
import batchwright.food.Contents;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a pack holds: {@code 400} grams, also {@code 400 g} or {@code 1.5 kg}, or {@code 4 x 400} in a multipack; and what is left
 * of one after draining.
 */
final class ContentsGrammar {
    static final NumberRange GRAMS =
            NumberRange.of("weight of a pack", "1", "50000", "g", "as bought, with peel and bone");
    private static final NumberRange UNITS =
            NumberRange.of("number of units", "2", "100", "", "a single pack is its grams alone");
    private static final String EXPECTED = "expected grams such as 500, or 4 x 400 in a multipack";
    private static final NumberRange DRAINED = NumberRange.of("drained weight", "1", "50000", "g", "");
    private static final Pattern MULTIPACK = Pattern.compile("(\\S+?)\\s*[xX\u00d7]\\s*(.+)");

    private final Problems problems;

    ContentsGrammar(Problems problems) {
        this.problems = problems;
    }

    /**
     * @param grams of the pack as the shelf says it
     * @param drained of one unit; may be empty
     */
    Optional<Contents> read(Written grams, Written drained) {
        Matcher multipack = MULTIPACK.matcher(grams.text());
        boolean many = multipack.matches();
        Optional<Integer> units =
                many ? new Numbers(problems).whole(new Written(multipack.group(1), grams.at()), UNITS) : Optional.of(1);
        Written one = many ? new Written(multipack.group(2), grams.at()) : grams;
        Optional<BigDecimal> unitGrams = new Weights(problems).read(one, GRAMS, EXPECTED);
        if (units.isEmpty() || unitGrams.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal all = unitGrams.get().multiply(BigDecimal.valueOf(units.get()));
        if (!GRAMS.holds(all)) {
            problems.error(grams, GRAMS.wrong(all), GRAMS.expected());
            return Optional.empty();
        }
        int before = problems.errors();
        Optional<BigDecimal> left = drained.isEmpty() ? Optional.empty() : drained(drained, unitGrams.get());
        return problems.errors() > before
                ? Optional.empty()
                : Optional.of(new Contents(units.get(), unitGrams.get(), left));
    }

    private Optional<BigDecimal> drained(Written cell, BigDecimal unitGrams) {
        Optional<BigDecimal> left = new Weights(problems).read(cell, DRAINED, "expected grams such as 240");
        if (left.isPresent() && left.get().compareTo(unitGrams) > 0) {
            problems.error(
                    cell,
                    "more is left after draining, %s g, than the %s g of one"
                            .formatted(left.get().toPlainString(), unitGrams.toPlainString()),
                    "expected the drained weight of one unit, and in grams its weight with liquid");
        }
        return left;
    }
}
