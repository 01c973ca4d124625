package batchwright.files.value;

import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit, such as 74 kg or 15 %. */
public record Measured(Written number, String unit) {
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([-+]?[0-9.,]+(?:[eE][0-9]+)?)\\s*(.*)");

    private static final Pattern WORDS = Pattern.compile("[a-zA-Z% ]{1,20}");

    /** @param example what to write instead, such as 74 kg or 163 lb */
    public static Optional<Measured> read(Written written, List<String> units, String example, Problems problems) {
        Matcher parts = NUMBER_AND_UNIT.matcher(written.text());
        if (!parts.matches()) {
            problems.error(written, written.quoted() + " has no number in front", "expected " + example);
            return Optional.empty();
        }
        String unit = parts.group(2);
        if (!units.contains(unit)) {
            String wrong = wrong(written, unit);
            problems.error(written, wrong, "expected " + example);
            return Optional.empty();
        }
        return Optional.of(new Measured(new Written(parts.group(1), written.at()), unit));
    }

    private static String wrong(Written written, String unit) {
        if (unit.isEmpty()) {
            return written.quoted() + " has no unit";
        }
        return WORDS.matcher(unit).matches()
                ? "the unit \"%s\" does not fit here".formatted(unit)
                : written.quoted() + " is not a number with a unit";
    }

    /** The number, when only one unit is taken. */
    public static Optional<BigDecimal> in(Written written, NumberRange range, String example, Problems problems) {
        return read(written, List.of(range.unit()), example, problems)
                .flatMap(m -> new Numbers(problems).decimal(m.number(), range));
    }
}
