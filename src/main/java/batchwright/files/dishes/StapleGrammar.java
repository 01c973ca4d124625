package batchwright.files.dishes;

import batchwright.food.Staple;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A staple, with or without grams for one container: {@code salt 2 g}, {@code bay leaf}. */
final class StapleGrammar {
    private static final Pattern WITH_GRAMS = Pattern.compile("(.+?) (\\d{1,3}(?:\\.\\d{1,2})?) g");

    private StapleGrammar() {}

    static Staple read(Written written) {
        Matcher grams = WITH_GRAMS.matcher(written.text());
        return grams.matches()
                ? Staple.of(grams.group(1), Optional.of(new BigDecimal(grams.group(2))))
                : Staple.of(written.text());
    }
}
