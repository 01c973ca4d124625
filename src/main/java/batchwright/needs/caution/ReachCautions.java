package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import java.util.ArrayList;
import java.util.List;

/** Cautions that follow from a weight to reach by a date, besides those that every rate of change has. */
final class ReachCautions {
    private static final double OBESE_BMI = 30;
    private static final double FIRST_LOSS_PERCENT = 10;
    private static final double PER_CENT = 100;

    private final GoalFinding goal;
    private final Body body;
    private final Goal.ReachWeight reach;
    private final List<Caution> cautions = new ArrayList<>();

    private ReachCautions(GoalFinding goal, Goal.ReachWeight reach) {
        this.goal = goal;
        this.body = goal.eater().body();
        this.reach = reach;
    }

    static List<Caution> of(GoalFinding goal) {
        return goal.reach().map(reach -> new ReachCautions(goal, reach).all()).orElse(List.of());
    }

    private List<Caution> all() {
        if (goal.change().gains()) {
            gainToObesity();
        } else if (goal.change().loses()) {
            muchLoss();
        }
        return cautions;
    }

    private void gainToObesity() {
        double bmi = body.bmiAt(reach.weight());
        if (!Numerals.below(bmi, OBESE_BMI)) {
            cautions.add(Caution.warn(
                    "goal_bmi_30_or_more",
                    Numerals.plain(reach.weight().kg()) + " kg would be a BMI of " + Numerals.oneDecimal(bmi)
                            + ". From 30 on weight makes illness likelier, unless it is mostly muscle; ask a doctor before you gain so"
                            + " much.",
                    new Citation("WHO: BMI from 30 on is obesity; from memory")));
        }
    }

    private void muchLoss() {
        double percent = (1 - reach.weight().kg() / body.weight().kg()) * PER_CENT;
        if (Numerals.above(percent, FIRST_LOSS_PERCENT)) {
            Mass first = new Mass(body.weight().kg() * (1 - FIRST_LOSS_PERCENT / PER_CENT));
            cautions.add(Caution.warn(
                    "loss_over_10_percent",
                    "This goal loses " + Numerals.whole(percent)
                            + " % of body weight. The usual first step is 10 %, to "
                            + Numerals.oneDecimal(first.kg())
                            + " kg, in about half a year; then hold it for a while, and look at the next"
                            + " step with a doctor or dietitian.",
                    new Citation("NHLBI, obesity guidelines 1998 and 2000: 10 % over 6 months")));
        }
    }
}
