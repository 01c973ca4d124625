package batchwright.files.foods;

import batchwright.files.foods.Per.Household;
import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code 100 g}, {@code 100 ml = 103 g}, {@code 1 bar = 45 g}; also {@code 2/3 cup (55 g)} as labels print it. */
final class PerGrammar {
    private static final String EXAMPLES = "expected 100 g, 100 ml = 103 g, 1 bar = 45 g or 2 biscuits = 25 g";
    private static final Pattern WEIGHT = Pattern.compile("([0-9.,]+) *g", Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH_WEIGHT = Pattern.compile("(.*?) *(?:= *([^()=]*)|\\(([^()=]*)\\))");
    private static final Pattern COUNT_AND_WORD =
            Pattern.compile("(?:(\\d{1,3}) +)?(\\d{1,4}(?:\\.\\d{1,2})?)(?:/(\\d{1,2}))? *([a-z][a-z -]{0,39})");
    private static final Set<String> VOLUMES = Set.of("ml", "cl", "dl", "l");
    private static final NumberRange GRAMS =
            NumberRange.of("weight", "1", "5000", "g", "the weight that the figures are for");
    /** What a cook pours lies between whipped cream and honey; anything outside is a slip. */
    private static final NumberRange GRAMS_OF_ML =
            NumberRange.of("weight of 1 ml", "0.2", "1.6", "g", "milk has 1.03 g, oil 0.92 g, honey 1.4 g");

    private final Problems problems;

    PerGrammar(Problems problems) {
        this.problems = problems;
    }

    Optional<Per> read(Written written) {
        Matcher weight = WEIGHT.matcher(written.text());
        if (weight.matches()) {
            return grams(weight.group(1), written).map(grams -> new Per(plain(grams) + " g", grams, Optional.empty()));
        }
        Matcher both = WITH_WEIGHT.matcher(written.text());
        String amount = both.matches() ? both.group(1) : written.text();
        Matcher counted = COUNT_AND_WORD.matcher(amount.toLowerCase(Locale.ROOT));
        Optional<BigDecimal> count = counted.matches() ? count(counted) : Optional.empty();
        if (count.isEmpty()) {
            return refuse(written, written.quoted() + " is no amount of food", EXAMPLES);
        }
        return both.matches()
                ? withWeight(written, both, count.get(), counted.group(4))
                : withoutWeight(written, counted.group(4));
    }

    private Optional<Per> withoutWeight(Written written, String word) {
        if (VOLUMES.contains(word)) {
            return refuse(
                    written,
                    written.quoted() + " says no weight, and this program counts in grams",
                    "expected it with its weight: 100 ml = 103 g. Usual weights of 100 ml: water 100 g, milk 103 g, oil 92 g");
        }
        return refuse(written, written.quoted() + " says no weight in g", EXAMPLES);
    }

    private Optional<Per> withWeight(Written written, Matcher both, BigDecimal count, String word) {
        String right = both.group(2) == null ? both.group(3) : both.group(2);
        Matcher weight = WEIGHT.matcher(right.strip());
        if (!weight.matches()) {
            return refuse(written, written.quoted() + " says no weight in g", EXAMPLES);
        }
        if (word.equals("g")) {
            return refuse(written, written.quoted() + " says two weights", EXAMPLES);
        }
        Optional<BigDecimal> grams = grams(weight.group(1), written);
        String shown =
                both.group(1).strip() + " = " + grams.map(PerGrammar::plain).orElse("") + " g";
        if (VOLUMES.contains(word)) {
            return grams.filter(g -> isPoured(g, count, word, written)).map(g -> new Per(shown, g, Optional.empty()));
        }
        return grams.map(g -> new Per(shown, g, Optional.of(new Household(one(word, count), share(g, count)))));
    }

    private boolean isPoured(BigDecimal grams, BigDecimal count, String unit, Written written) {
        int ml = switch (unit) {
            case "l" -> 1000;
            case "dl" -> 100;
            case "cl" -> 10;
            default -> 1;
        };
        BigDecimal density = share(grams, count.multiply(BigDecimal.valueOf(ml)));
        if (!GRAMS_OF_ML.holds(density)) {
            problems.error(written, GRAMS_OF_ML.wrong(density), GRAMS_OF_ML.expected());
        }
        return GRAMS_OF_ML.holds(density);
    }

    private Optional<BigDecimal> grams(String number, Written written) {
        return new Numbers(problems).decimal(new Written(number, written.at()), GRAMS);
    }

    /** 3, 0.5, 2/3 or 1 1/2; empty when it is nothing or no number. */
    private static Optional<BigDecimal> count(Matcher counted) {
        BigDecimal whole = counted.group(1) == null ? BigDecimal.ZERO : new BigDecimal(counted.group(1));
        BigDecimal top = new BigDecimal(counted.group(2));
        if (counted.group(3) == null) {
            return Optional.of(top).filter(c -> c.signum() > 0 && counted.group(1) == null);
        }
        BigDecimal bottom = new BigDecimal(counted.group(3));
        return bottom.signum() == 0 || top.signum() == 0
                ? Optional.empty()
                : Optional.of(whole.add(top.divide(bottom, 8, RoundingMode.HALF_UP)));
    }

    /** Measures are named in the singular: 2 biscuits are of the measure biscuit. */
    private static String one(String word, BigDecimal count) {
        boolean many = count.compareTo(BigDecimal.ONE) > 0;
        if (!many || !word.endsWith("s") || word.endsWith("ss")) {
            return word;
        }
        boolean longer = word.matches(".*(ss|sh|ch|x)es");
        return word.substring(0, word.length() - (longer ? 2 : 1));
    }

    private static BigDecimal share(BigDecimal grams, BigDecimal count) {
        return grams.divide(count, 2, RoundingMode.HALF_UP);
    }

    private static String plain(BigDecimal grams) {
        return grams.toPlainString();
    }

    private Optional<Per> refuse(Written written, String wrong, String expected) {
        problems.error(written, wrong, expected);
        return Optional.empty();
    }
}
