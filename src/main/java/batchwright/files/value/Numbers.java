package batchwright.files.value;

import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** Plain decimal numbers with a point, such as 12 or 0.25. No exponents, no thousands marks, no decimal comma. */
public final class Numbers {
    private static final Pattern DECIMAL = Pattern.compile("-?(\\d{1,15}(\\.\\d{1,10})?|\\.\\d{1,10})");
    private static final Pattern COMMA = Pattern.compile("-?\\d{1,15},\\d{1,10}");

    private final Problems problems;

    public Numbers(Problems problems) {
        this.problems = problems;
    }

    /** A decimal inside its range; otherwise a problem at its place. */
    public Optional<BigDecimal> decimal(Written written, NumberRange range) {
        Optional<BigDecimal> number = decimal(written);
        if (number.isPresent() && !range.holds(number.get())) {
            problems.error(written, range.wrong(number.get()), range.expected());
            return Optional.empty();
        }
        return number;
    }

    /** A whole number inside its range; otherwise a problem at its place. */
    public Optional<Integer> whole(Written written, NumberRange range) {
        Optional<BigDecimal> number = decimal(written, range);
        if (number.isPresent() && number.get().stripTrailingZeros().scale() > 0) {
            problems.error(
                    written,
                    "%s %s is not a whole number"
                            .formatted(range.what(), number.get().toPlainString()),
                    range.expectedWhole());
            return Optional.empty();
        }
        return number.map(BigDecimal::intValueExact);
    }

    /** A decimal of any size; otherwise a problem at its place. */
    public Optional<BigDecimal> decimal(Written written) {
        String text = written.text();
        if (DECIMAL.matcher(text).matches()) {
            return Optional.of(new BigDecimal(text));
        }
        if (COMMA.matcher(text).matches()) {
            problems.error(
                    written, written.quoted() + " has a decimal comma", "expected a point: " + text.replace(',', '.'));
        } else {
            problems.error(written, written.quoted() + " is not a number", "expected digits, such as 12 or 0.25");
        }
        return Optional.empty();
    }
}
