package batchwright.needs.caution;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.Hall2007;
import batchwright.needs.safety.Harms;
import batchwright.needs.safety.SafeEnd;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/**
 * Cautions that follow from where a goal ends: at its weight by a date, else after twelve weeks. A loss may not end below the least
 * BMI or body fat.
 */
final class EndCautions {
    private static final double WEEKS_AHEAD = 12;
    private static final double PER_CENT = 100;
    /** Named weights have one decimal [kg]. */
    private static final double TENTHS = 10;

    private static final double NORMAL_BMI = 18.5;

    private final GoalFinding goal;
    private final Body body;
    private final SafeEnd least;
    private final Mass end;
    private final List<Caution> cautions = new ArrayList<>();

    private EndCautions(GoalFinding goal) {
        this.goal = goal;
        this.body = goal.eater().body();
        this.least = SafeEnd.of(body);
        this.end = goal.reach()
                .map(Goal.ReachWeight::weight)
                .orElseGet(() -> new Mass(
                        Math.max(1, body.weight().kg() * (1 + goal.change().percentAWeek() * WEEKS_AHEAD / PER_CENT))));
    }

    static List<Caution> of(GoalFinding goal) {
        var check = new EndCautions(goal);
        if (goal.change().loses()) {
            check.lowWeight(check.least.bmi());
            check.lowFat();
        } else if (goal.reach().isPresent()) {
            check.lowWeight(NORMAL_BMI);
        }
        return check.cautions;
    }

    private void lowWeight(double leastBmi) {
        double bmi = body.bmiAt(end);
        if (Numerals.below(bmi, leastBmi)) {
            cautions.add(Caution.stop(
                    leastBmi == NORMAL_BMI ? "goal_below_bmi_18_5" : "goal_below_least_bmi",
                    where(bmi, leastBmi)
                            + " So low a weight is bad for bones, hormones and defences, so no plan is made; a doctor or"
                            + " dietitian can look at it with you." + leastThatIsPlanned(leastBmi),
                    SafeEnd.bmiSource(body)));
        }
    }

    private String where(double bmi, double leastBmi) {
        String under = ", under " + Numerals.plain(leastBmi)
                + (leastBmi == NORMAL_BMI ? "." : ", the least at the end of a loss at this age.");
        return goal.reach().isPresent()
                ? Numerals.plain(end.kg()) + " kg would be a BMI of " + Numerals.oneDecimal(bmi) + under
                : "The BMI is " + Numerals.oneDecimal(body.bmi()) + " now and after " + Numerals.whole(WEEKS_AHEAD)
                        + " weeks of this goal it would be " + Numerals.oneDecimal(bmi) + under;
    }

    private String leastThatIsPlanned(double leastBmi) {
        double metres = body.height().metres();
        double leastKg = Math.ceil(leastBmi * metres * metres * TENTHS) / TENTHS;
        return goal.reach().isPresent()
                ? " The least that is planned to here is " + Numerals.oneDecimal(leastKg) + " kg."
                : "";
    }

    /** Whoever is below already is refused by the table of decisions. */
    private void lowFat() {
        if (!SafeEnd.isToldOrTaped(body)) {
            return;
        }
        body.bodyFat()
                .filter(now -> !Numerals.below(now.percent(), least.fatPercent()))
                .ifPresent(now -> {
                    double fatKg = now.fraction() * body.weight().kg();
                    double lostKg = Hall2007.fatChangeKg(
                            new Mass(fatKg), end.kg() - body.weight().kg());
                    double percent = (fatKg + lostKg) / end.kg() * PER_CENT;
                    if (Numerals.below(percent, least.fatPercent())) {
                        cautions.add(lowFat(percent));
                    }
                });
    }

    private Caution lowFat(double percent) {
        return Caution.stop(
                "goal_below_least_fat",
                "Body fat would be about " + Numerals.oneDecimal(percent) + " % "
                        + (goal.reach().isPresent()
                                ? "at " + Numerals.plain(end.kg()) + " kg"
                                : "after " + Numerals.whole(WEEKS_AHEAD) + " weeks of this goal")
                        + ". A loss is planned to " + Numerals.plain(least.fatPercent())
                        + " % at the least, the error of its measurement included: less harms "
                        + Harms.of(body)
                        + ". Choose an earlier end or a slower goal; a sports doctor or dietitian can look at it with you.",
                SafeEnd.fatSource(body));
    }
}
