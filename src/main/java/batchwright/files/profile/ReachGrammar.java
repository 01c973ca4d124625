package batchwright.files.profile;

import batchwright.files.value.DateGrammar;
import batchwright.files.value.Problems;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import batchwright.text.Written;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A weight by a date: {@code reach 78 kg by 2027-03-01}. Counted from the cooking day, at least a week and at most 104 weeks. */
final class ReachGrammar {
    private static final Pattern REACH = Pattern.compile("reach\\s+(.+?)\\s+by\\s+(\\S+)");
    private static final int LEAST_DAYS = 7;
    private static final int MOST_WEEKS = 104;

    private final Optional<LocalDate> cookingDay;
    private final Problems problems;

    /** @param cookingDay empty when it is not known because other files have errors; then there is no goal, but it is checked */
    ReachGrammar(Optional<LocalDate> cookingDay, Problems problems) {
        this.cookingDay = cookingDay;
        this.problems = problems;
    }

    /** Whether this form was meant. */
    static boolean isMeant(Written written) {
        return written.text().startsWith("reach");
    }

    Optional<Goal> read(Written written) {
        Matcher reach = REACH.matcher(written.text());
        if (!reach.matches()) {
            problems.error(
                    written,
                    "this is not a goal by a date: " + written.quoted(),
                    "expected a weight and a day: reach 78 kg by 2027-03-01, or reach 172 lb by 2027-03-01");
            return Optional.empty();
        }
        Optional<Mass> weight = new BodyReader(problems).weight(new Written(reach.group(1), written.at()));
        Optional<LocalDate> by = new DateGrammar(problems).read(new Written(reach.group(2), written.at()));
        return cookingDay.flatMap(from ->
                by.filter(day -> isInReach(day, from, written)).flatMap(day -> weight.map(w -> goal(w, from, day))));
    }

    private static Goal goal(Mass weight, LocalDate from, LocalDate by) {
        return new Goal.ReachWeight(weight, from, by);
    }

    private boolean isInReach(LocalDate by, LocalDate from, Written written) {
        LocalDate least = from.plusDays(LEAST_DAYS);
        LocalDate most = from.plusWeeks(MOST_WEEKS);
        if (!by.isBefore(least) && !by.isAfter(most)) {
            return true;
        }
        problems.error(
                written,
                by + " is " + (by.isAfter(most) ? "more than " + MOST_WEEKS + " weeks after" : soon(by, from))
                        + " the cooking day, " + from,
                "expected a day from %s to %s%s"
                        .formatted(least, most, by.isAfter(most) ? "; a long way is better walked in steps" : ""));
        return false;
    }

    private static String soon(LocalDate by, LocalDate from) {
        return by.isAfter(from) ? "less than a week after" : "not after";
    }
}
