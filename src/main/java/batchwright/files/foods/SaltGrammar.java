package batchwright.files.foods;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code 0.9 g salt}, {@code sodium 120 mg} and the like into sodium: European labels state the one, US labels the other. */
final class SaltGrammar {
    private static final String WORD = "(salt|sodium)";
    private static final String AMOUNT = "((?:<|less than )? *[-0-9.,]+) *(g|mg)";
    private static final Pattern WORD_LAST = Pattern.compile(AMOUNT + " +(?:of +)?" + WORD);
    private static final Pattern WORD_FIRST = Pattern.compile(WORD + " +" + AMOUNT);
    /** Salt = sodium x 2.5, Regulation (EU) 1169/2011; so 1 g of salt has 400 mg of sodium. */
    private static final BigDecimal SODIUM_OF_SALT = new BigDecimal("0.4");

    private static final BigDecimal MG_PER_G = BigDecimal.valueOf(1000);

    private final Problems problems;

    SaltGrammar(Problems problems) {
        this.problems = problems;
    }

    /** Sodium [mg]. */
    Optional<LabelAmount> read(Written written) {
        String text = written.text().toLowerCase(Locale.ROOT);
        Matcher last = WORD_LAST.matcher(text);
        if (last.matches()) {
            return sodium(last.group(1), last.group(2), last.group(3), written);
        }
        Matcher first = WORD_FIRST.matcher(text);
        if (first.matches()) {
            return sodium(first.group(2), first.group(3), first.group(1), written);
        }
        problems.error(
                written,
                written.quoted() + " does not say how much salt or sodium",
                "expected 0.9 g salt or 120 mg sodium, as the label says it");
        return Optional.empty();
    }

    private Optional<LabelAmount> sodium(String number, String unit, String what, Written written) {
        var range = NumberRange.of(what, "0", "1000000", unit, "");
        return LabelAmount.read(new Written(number, written.at()), range, problems)
                .map(a -> unit.equals("g") ? a.times(MG_PER_G) : a)
                .map(a -> what.equals("salt") ? a.times(SODIUM_OF_SALT) : a);
    }
}
