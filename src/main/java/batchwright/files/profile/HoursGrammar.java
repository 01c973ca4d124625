package batchwright.files.profile;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A time: {@code 8 h}, {@code 1.5 h}, {@code 45 min}, {@code 7 h 30 min}; always whole minutes. */
final class HoursGrammar {
    static final String EXAMPLE = "a time such as 8 h, 45 min or 7 h 30 min";

    private static final Pattern FORM =
            Pattern.compile("(?:([-0-9.,]+)\\s*h)?\\s*(?:([-0-9.,]+)\\s*min)?", Pattern.CASE_INSENSITIVE);
    private static final NumberRange HOURS = NumberRange.of("time", "0", "168", "h", "a week has 168 hours");
    private static final NumberRange MINUTES = NumberRange.of("time", "0", "10080", "min", "a week has 10080 minutes");
    private static final BigDecimal AN_HOUR = BigDecimal.valueOf(60);

    private HoursGrammar() {}

    /** Minutes, more than 0. */
    static Optional<Integer> read(Written written, Problems problems) {
        Matcher form = FORM.matcher(written.text());
        if (written.isEmpty() || !form.matches()) {
            problems.error(written, written.quoted() + " is not a time", "expected " + EXAMPLE);
            return Optional.empty();
        }
        Optional<BigDecimal> hours = number(form.group(1), HOURS, written, problems);
        Optional<BigDecimal> minutes = number(form.group(2), MINUTES, written, problems);
        if (hours.isEmpty() || minutes.isEmpty()) {
            return Optional.empty();
        }
        return whole(hours.get().multiply(AN_HOUR).add(minutes.get()), written, problems);
    }

    private static Optional<BigDecimal> number(String text, NumberRange range, Written written, Problems problems) {
        return text == null
                ? Optional.of(BigDecimal.ZERO)
                : new Numbers(problems).decimal(new Written(text, written.at()), range);
    }

    private static Optional<Integer> whole(BigDecimal minutes, Written written, Problems problems) {
        if (minutes.signum() == 0) {
            problems.error(written, "no time is spent on this", "expected more than 0 min, or the line left out");
            return Optional.empty();
        }
        if (minutes.stripTrailingZeros().scale() > 0) {
            problems.error(written, written.quoted() + " is not a whole number of minutes", "expected " + EXAMPLE);
            return Optional.empty();
        }
        return Optional.of(minutes.intValueExact());
    }

    /** The reverse: 7 h 30 min. */
    static String written(int minutes) {
        int hours = minutes / AN_HOUR.intValue();
        int rest = minutes % AN_HOUR.intValue();
        if (rest == 0) {
            return hours + " h";
        }
        return hours == 0 ? rest + " min" : hours + " h " + rest + " min";
    }
}
