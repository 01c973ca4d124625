package batchwright.files.profile;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How often the eater trains with weights: {@code no}, or {@code 3 times a week}. */
final class StrengthTrainingGrammar {
    private static final NumberRange TIMES = NumberRange.of("strength_training", "0", "14", "times a week", "");
    private static final Pattern FORM = Pattern.compile("(\\S+)\\s+(?:times?|x)\\s+a\\s+week");

    private StrengthTrainingGrammar() {}

    /** Times a week. */
    static Optional<Integer> read(Written written, Problems problems) {
        if (written.text().equals("no")) {
            return Optional.of(0);
        }
        Matcher form = FORM.matcher(written.text());
        if (!form.matches()) {
            problems.error(
                    written, written.quoted() + " does not say how often", "expected no, or such as 3 times a week");
            return Optional.empty();
        }
        return new Numbers(problems).whole(new Written(form.group(1), written.at()), TIMES);
    }
}
