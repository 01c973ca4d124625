package batchwright.files.value;

import java.math.BigDecimal;

/**
 * What a number may be.
 *
 * @param what the number is, such as weight
 * @param unit such as kg; may be empty
 * @param why what lies outside is refused; may be empty
 */
public record NumberRange(String what, BigDecimal least, BigDecimal most, String unit, String why) {
    public static NumberRange of(String what, String least, String most, String unit, String why) {
        return new NumberRange(what, new BigDecimal(least), new BigDecimal(most), unit, why);
    }

    public boolean holds(BigDecimal number) {
        return least.compareTo(number) <= 0 && number.compareTo(most) <= 0;
    }

    /** The sentence for a number that is outside. */
    public String wrong(BigDecimal number) {
        return number.compareTo(least) < 0
                ? "%s %s is less than %s".formatted(what, withUnit(number), withUnit(least))
                : "%s %s is more than %s".formatted(what, withUnit(number), withUnit(most));
    }

    public String expected() {
        return expected("");
    }

    String expectedWhole() {
        return expected("a whole number from ");
    }

    private String expected(String kind) {
        String range = "expected %s%s to %s".formatted(kind, least.toPlainString(), withUnit(most));
        return why.isEmpty() ? range : range + ": " + why;
    }

    /** Such as ", in kg". */
    public String inUnit() {
        return unit.isEmpty() ? "" : ", in " + unit;
    }

    private String withUnit(BigDecimal number) {
        String plain = number.toPlainString();
        return unit.isEmpty() ? plain : plain + " " + unit;
    }
}
