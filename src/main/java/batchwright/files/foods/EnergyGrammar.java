package batchwright.files.foods;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads {@code 1550 kJ}, {@code 370 kcal} or both: {@code 1550 kJ / 370 kcal}, {@code 370 kcal (1550 kJ)}; and {@code 370
 * Calories} as US labels have it, which are kcal.
 */
final class EnergyGrammar {
    private static final String EXPECTED = "expected 1550 kJ, 370 kcal or 1550 kJ / 370 kcal";
    private static final String FIGURE = "([0-9.,]+) *([a-zA-Z]*)";
    private static final Pattern ONE_OR_TWO = Pattern.compile(FIGURE + "(?: *[/(=] *" + FIGURE + " *\\)?)?");
    private static final Pattern CALORIES_FIRST = Pattern.compile("^(?i:calories):? +([0-9.,]+)$");
    private static final NumberRange KCAL = NumberRange.of("energy", "0", "50000", "kcal", "");
    private static final NumberRange KILOJOULES = NumberRange.of("energy", "0", "200000", "kJ", "");

    private final Problems problems;

    EnergyGrammar(Problems problems) {
        this.problems = problems;
    }

    Optional<LabelEnergy> read(Written written) {
        Matcher found =
                ONE_OR_TWO.matcher(CALORIES_FIRST.matcher(written.text()).replaceFirst("$1 kcal"));
        if (!found.matches()) {
            return refuse(written, written.quoted() + " is no energy");
        }
        String first = unit(found.group(2));
        String second = found.group(4) == null ? "" : unit(found.group(4));
        boolean two = found.group(3) != null;
        if (first.isEmpty() || (two && second.isEmpty())) {
            return refuse(written, written.quoted() + " lacks the unit kJ or kcal");
        }
        if (two && first.equals(second)) {
            return refuse(written, "%s says %s twice".formatted(written.quoted(), first));
        }
        Optional<BigDecimal> one = number(found.group(1), first, written);
        Optional<BigDecimal> other = two ? number(found.group(3), second, written) : Optional.empty();
        if (one.isEmpty() || (two && other.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(first.equals("kcal") ? new LabelEnergy(one, other) : new LabelEnergy(other, one));
    }

    /** kcal or kJ; empty for anything else. The cal in small letters is a thousandth of a kcal, and no label counts in it. */
    private static String unit(String word) {
        if (word.equals("Cal")) {
            return "kcal";
        }
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "kcal", "calories", "calorie" -> "kcal";
            case "kj" -> "kJ";
            default -> "";
        };
    }

    private Optional<BigDecimal> number(String text, String unit, Written written) {
        return new Numbers(problems).decimal(new Written(text, written.at()), unit.equals("kcal") ? KCAL : KILOJOULES);
    }

    private Optional<LabelEnergy> refuse(Written written, String wrong) {
        problems.error(written, wrong, EXPECTED + "; Calories on a US label are kcal");
        return Optional.empty();
    }
}
