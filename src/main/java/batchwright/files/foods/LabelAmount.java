package batchwright.files.foods;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount as labels state it: 3.5, 3.5 g, or {@code <0.5} for what was found but is too little to be said. Such a trace
 * counts as "at least 0": between nothing and the limit, so that a floor is never thought to be reached by it.
 *
 * @param atLeast whether the true amount may be more
 */
record LabelAmount(BigDecimal amount, boolean atLeast) {
    private static final Pattern FORM = Pattern.compile("(<|less than )? *([-0-9.,]+) *([a-zA-Z\u00b5\u03bc]*)");

    /** As labels write it, with either of the two letters that look like mu. */
    private static final Set<String> MICROGRAM = Set.of("mcg", "\u00b5g", "\u03bcg");

    /** @param range of what and in which unit; the unit need not be written */
    static Optional<LabelAmount> read(Written written, NumberRange range, Problems problems) {
        Matcher form = FORM.matcher(written.text());
        if (!form.matches()) {
            problems.error(
                    written,
                    written.quoted() + " is no amount",
                    "expected digits, such as 12, 0.25 or <0.5, in " + range.unit());
            return Optional.empty();
        }
        String unit = MICROGRAM.contains(form.group(3)) ? "ug" : form.group(3);
        if (!unit.isEmpty() && !unit.equals(range.unit())) {
            problems.error(
                    written,
                    "%s is not in %s".formatted(written.quoted(), range.unit()),
                    "expected the %s in %s".formatted(range.what(), range.unit()));
            return Optional.empty();
        }
        boolean trace = form.group(1) != null;
        return new Numbers(problems)
                .decimal(new Written(form.group(2), written.at()), range)
                .map(number -> trace ? new LabelAmount(BigDecimal.ZERO, true) : new LabelAmount(number, false));
    }

    LabelAmount times(BigDecimal factor) {
        return new LabelAmount(amount.multiply(factor), atLeast);
    }
}
