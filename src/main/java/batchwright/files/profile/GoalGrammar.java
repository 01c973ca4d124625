package batchwright.files.profile;

import batchwright.files.value.NumberRange;
import batchwright.files.value.Numbers;
import batchwright.files.value.Problems;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import batchwright.text.Written;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the body weight is to do: {@code hold}; or {@code gain} or {@code lose}, then {@code 0.25 % a week},
 * {@code 0.5 kg a week}, {@code 1 lb a week} or {@code 300 kcal a day}; or {@code reach 78 kg by 2027-03-01}, or a weight in lb. Rates are written without a sign.
 */
final class GoalGrammar {
    private static final Pattern RATE = Pattern.compile(
            "(gain|lose)\\s+(\\S+?)\\s*(%\\s+a\\s+week|kg\\s+a\\s+week|lb\\s+a\\s+week|kcal\\s+a\\s+day)");
    private static final String EXPECTED = "expected hold, or gain or lose with a rate, or a weight by a day: "
            + "gain 0.25 % a week, lose 0.4 kg or 1 lb a week, lose 400 kcal a day, reach 78 kg or 172 lb by"
            + " 2027-03-01";
    static final String WHY = "faster change is for a clinician to guide; to stay as you are write hold";
    private static final NumberRange PERCENT = NumberRange.of("rate", "0.01", "2", "% a week", WHY);
    private static final NumberRange KG = NumberRange.of("rate", "0.01", "2", "kg a week", WHY);
    private static final NumberRange LB = NumberRange.of("rate", "0.03", "4.4", "lb a week", WHY);

    private GoalGrammar() {}

    /** @param cookingDay that dates are counted from; see {@link ReachGrammar} */
    static Optional<Goal> read(Written written, Optional<LocalDate> cookingDay, Problems problems) {
        if (written.text().equals("hold")) {
            return Optional.of(Goal.HOLD);
        }
        if (ReachGrammar.isMeant(written)) {
            return new ReachGrammar(cookingDay, problems).read(written);
        }
        Matcher rate = RATE.matcher(written.text());
        if (!rate.matches()) {
            problems.error(written, "this is not a goal: " + written.quoted(), EXPECTED);
            return Optional.empty();
        }
        int sign = rate.group(1).equals("gain") ? 1 : -1;
        var number = new Written(rate.group(2), written.at());
        String unit = rate.group(3);
        var numbers = new Numbers(problems);
        if (unit.startsWith("%")) {
            return numbers.decimal(number, PERCENT).map(n -> new Goal.PercentAWeek(signed(n, sign)));
        }
        if (unit.startsWith("lb")) {
            return numbers.decimal(number, LB).map(n -> new Goal.KgAWeek(signed(n, sign) * Mass.KG_PER_LB));
        }
        return unit.startsWith("kg")
                ? numbers.decimal(number, KG).map(n -> new Goal.KgAWeek(signed(n, sign)))
                : numbers.decimal(number, ProfileRanges.KCAL).map(n -> new Goal.EnergyADay(signed(n, sign)));
    }

    private static double signed(BigDecimal rate, int sign) {
        return sign * rate.doubleValue();
    }
}
