package batchwright.page.stove;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a kitchen scale shows. */
record PotWeight(BigDecimal grams) {
    private static final Pattern TYPED = Pattern.compile("([0-9]{1,6}(?:[.,][0-9]{1,3})?) ?(g|kg|)");

    /** Of a number without a unit grams are meant; empty when it is no weight. */
    static Optional<PotWeight> of(String typed) {
        Matcher weight = TYPED.matcher(typed.strip());
        if (!weight.matches()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(weight.group(1).replace(',', '.'));
        return Optional.of(new PotWeight(weight.group(2).equals("kg") ? number.movePointRight(3) : number));
    }
}
