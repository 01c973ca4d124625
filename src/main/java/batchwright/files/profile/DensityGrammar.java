package batchwright.files.profile;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Box;
import batchwright.text.Written;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How much energy is in 100 g of a container: 60 to 160 kcal per 100 g, at least 60 kcal per 100 g, at most 160 kcal per 100 g. */
record DensityGrammar(OptionalInt least, OptionalInt most) {
    private static final Pattern ASKED = Pattern.compile(
            "(?:(at least|at most)\\s+|([0-9]{1,4})\\s+to\\s+)([0-9]{1,4})" + "\\s*kcal\\s+per\\s+100\\s*g");
    private static final NumberRange KCAL = NumberRange.of(
            "energy density", "1", String.valueOf(Box.DENSEST), "kcal per 100 g", "a stew has about 100, pure fat 900");

    static Optional<DensityGrammar> read(Written written, Problems problems) {
        Matcher said = ASKED.matcher(written.text());
        if (!said.matches()) {
            problems.error(
                    written,
                    written.quoted() + " is no energy density",
                    "expected 60 to 160 kcal per 100 g, at least 60 kcal per 100 g, or at most 160 kcal per 100 g");
            return Optional.empty();
        }
        OptionalInt second = whole(said.group(3), written, problems);
        if ("at least".equals(said.group(1))) {
            return Optional.of(new DensityGrammar(second, OptionalInt.empty()));
        }
        OptionalInt first = whole(said.group(2), written, problems);
        if (first.isPresent() && second.isPresent() && first.getAsInt() > second.getAsInt()) {
            problems.error(
                    written,
                    "the first number is more than the second",
                    "expected the smaller one first: 60 to 160 kcal per 100 g");
            return Optional.empty();
        }
        return Optional.of(new DensityGrammar(first, second));
    }

    private static OptionalInt whole(@Nullable String digits, Written at, Problems problems) {
        return digits == null
                ? OptionalInt.empty()
                : new Numbers(problems)
                        .whole(new Written(digits, at.at()), KCAL)
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty());
    }
}
