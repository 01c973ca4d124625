package batchwright.files.value;

import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Weights as shops and recipes write them: {@code 500}, {@code 500 g}, {@code 1.5 kg}, {@code 16 oz}, {@code 2 lb}. Pound and
 * ounce are those of the international agreement of 1959, 453.59237 g and a sixteenth of it.
 */
public final class Weights {
    private static final Map<String, BigDecimal> GRAMS = Map.of(
            "g", BigDecimal.ONE,
            "kg", BigDecimal.valueOf(1000),
            "oz", new BigDecimal("28.349523125"),
            "lb", new BigDecimal("453.59237"),
            "lbs", new BigDecimal("453.59237"));
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final Pattern FORM = Pattern.compile("(\\S*?[0-9.,])\\s*([a-zA-Z]*)");
    /** As fine as any scale in a kitchen. */
    private static final int DECIMALS = 2;

    private final Problems problems;

    public Weights(Problems problems) {
        this.problems = problems;
    }

    public static boolean isUnit(String word) {
        return GRAMS.containsKey(word);
    }

    /**
     * Grams of a weight whose unit may be left out.
     *
     * @param range in g
     * @param expected what to write instead of something that is no weight
     */
    public Optional<BigDecimal> read(Written written, NumberRange range, String expected) {
        if (NUMBER.matcher(written.text()).matches()) {
            return new Numbers(problems).decimal(written, range);
        }
        Matcher form = FORM.matcher(written.text());
        if (!form.matches() || !(form.group(2).isEmpty() || isUnit(form.group(2)))) {
            problems.error(written, written.quoted() + " is not a weight in g", expected);
            return Optional.empty();
        }
        return form.group(2).isEmpty()
                ? new Numbers(problems).decimal(written, range)
                : grams(new Written(form.group(1), written.at()), form.group(2), range);
    }

    /** @param range in g, whatever the unit */
    public Optional<BigDecimal> grams(Written number, String unit, NumberRange range) {
        if (unit.equals("g")) {
            return new Numbers(problems).decimal(number, range);
        }
        Optional<BigDecimal> grams = new Numbers(problems).decimal(number).map(n -> inGrams(n, unit));
        if (grams.isPresent() && !range.holds(grams.get())) {
            problems.error(number, range.wrong(grams.get()), range.expected());
            return Optional.empty();
        }
        return grams;
    }

    /** @param unit one for which {@link #isUnit} holds */
    public static BigDecimal inGrams(BigDecimal number, String unit) {
        BigDecimal grams = number.multiply(GRAMS.getOrDefault(unit, BigDecimal.ONE));
        BigDecimal plain = grams.scale() > DECIMALS ? grams.setScale(DECIMALS, RoundingMode.HALF_UP) : grams;
        BigDecimal stripped = plain.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
