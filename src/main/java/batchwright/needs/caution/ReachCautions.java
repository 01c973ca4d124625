package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.GoalFinding;
import batchwright.person.Body;
import batchwright.person.Goal;
import batchwright.quantity.Mass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Cautions that follow from a weight to reach by a date, besides those that every rate of change has. */
final class ReachCautions {
    private static final double GAIN_MOST_PERCENT_A_WEEK = 2;
    private static final double OBESE_BMI = 30;
    private static final double FIRST_LOSS_PERCENT = 10;
    private static final double DAYS_A_WEEK = 7;
    private static final double PER_CENT = 100;
    /** Weights that are named have one decimal [kg]. */
    private static final double TENTHS = 10;

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
        underweightGoal();
        if (goal.change().gains()) {
            gainTooFast();
            gainToObesity();
        } else if (goal.change().loses()) {
            muchLoss();
        }
        return cautions;
    }

    private void underweightGoal() {
        double bmi = body.bmiAt(reach.weight());
        if (Words.below(bmi, GoalCautions.LEAST_BMI)) {
            double metres = body.height().metres();
            double leastKg = Math.ceil(GoalCautions.LEAST_BMI * metres * metres * TENTHS) / TENTHS;
            cautions.add(Caution.stop(
                    "goal_below_bmi_18_5",
                    Words.plain(reach.weight().kg()) + " kg would be a BMI of " + Words.oneDecimal(bmi)
                            + ", under 18.5. So low a weight is bad for bones, hormones and defences, so no plan is made; a doctor or"
                            + " dietitian can look at it with you. The least that is planned to here is "
                            + Words.oneDecimal(leastKg)
                            + " kg.",
                    Citation.designChoice("no goal below the WHO normal range, BMI 18.5-24.9")));
        }
    }

    private void gainTooFast() {
        if (!Words.above(goal.change().percentAWeek(), GAIN_MOST_PERCENT_A_WEEK)) {
            return;
        }
        goal.band().ifPresent(band -> {
            double kgAWeek = band.mostPercent() / PER_CENT * body.weight().kg();
            cautions.add(Caution.stop(
                    "gain_too_fast",
                    "This goal gains " + Words.oneDecimal(goal.change().percentAWeek())
                            + " % of body weight a week, nearly all of it fat. More than 2 % is not planned; at the "
                            + Words.plain(band.mostPercent()) + " % that is advised at most, "
                            + saysWhen(reach, body, kgAWeek) + ".",
                    Citation.designChoice(
                            "no more than a profile can ask for by the week; advised: " + band.source())));
        });
    }

    private void gainToObesity() {
        double bmi = body.bmiAt(reach.weight());
        if (!Words.below(bmi, OBESE_BMI)) {
            cautions.add(Caution.warn(
                    "goal_bmi_30_or_more",
                    Words.plain(reach.weight().kg()) + " kg would be a BMI of " + Words.oneDecimal(bmi)
                            + ". From 30 on weight makes illness likelier, unless it is mostly muscle; ask a doctor before you gain so"
                            + " much.",
                    new Citation("WHO: BMI from 30 on is obesity; from memory")));
        }
    }

    private void muchLoss() {
        double percent = (1 - reach.weight().kg() / body.weight().kg()) * PER_CENT;
        if (Words.above(percent, FIRST_LOSS_PERCENT)) {
            Mass first = new Mass(body.weight().kg() * (1 - FIRST_LOSS_PERCENT / PER_CENT));
            cautions.add(Caution.warn(
                    "loss_over_10_percent",
                    "This goal loses " + Words.whole(percent) + " % of body weight. The usual first step is 10 %, to "
                            + Words.oneDecimal(first.kg())
                            + " kg, in about half a year; then hold it for a while, and look at the next"
                            + " step with a doctor or dietitian.",
                    new Citation("NHLBI, obesity guidelines 1998 and 2000: 10 % over 6 months")));
        }
    }

    /** When the weight would be reached at another rate. */
    static String saysWhen(Goal.ReachWeight reach, Body body, double kgAWeek) {
        double weeks = Math.abs(reach.weight().kg() - body.weight().kg()) / kgAWeek;
        LocalDate day = reach.from().plusDays((long) Math.ceil(weeks * DAYS_A_WEEK));
        return Words.plain(reach.weight().kg()) + " kg would be reached on " + day;
    }
}
