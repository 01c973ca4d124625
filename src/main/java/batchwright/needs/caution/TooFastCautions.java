package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.safety.SafeChange;
import batchwright.person.Body;
import batchwright.person.Goal;
import java.time.LocalDate;
import java.util.Optional;

/** Refuses a change that is faster than any that is planned, and says how fast would do. */
final class TooFastCautions {
    private static final double PER_CENT = 100;
    private static final double DAYS_A_WEEK = 7;
    /** How far two solved intakes may differ that mean the same. */
    private static final double SOLVED_KCAL = 0.01;

    private static final Citation LOSS = Citation.designChoice(
            "set by Helms et al. 2014 (0.5-1 % a week), NICE (0.5-1 kg a week), NHLBI (500-1000 kcal a"
                    + " day) and, for older adults, ESPEN (about 500 kcal a day)");
    private static final Citation GAIN = Citation.designChoice(
            "twice the 0.5 % a week that Iraki et al. 2019 advise at most; in steps below BMI 18.5, at most"
                    + " 20 % and 500 kcal from BMI 30 on");

    private TooFastCautions() {}

    /** @param weightIsRefused then no day is named for it */
    static Optional<Caution> of(GoalFinding goal, boolean weightIsRefused) {
        if (goal.change().loses()) {
            double most = goal.lossLimit().mostDeficitKcal(goal.model().start());
            return -goal.change().kcalADay() > most + SOLVED_KCAL
                    ? Optional.of(loss(goal, most, weightIsRefused ? "" : saysEarliest(goal)))
                    : Optional.empty();
        }
        SafeChange most = SafeChange.ofGain(goal.eater().body(), goal.total());
        return goal.change().gains()
                        && most.isExceededBy(
                                goal.change().kgAWeek(), goal.change().kcalADay())
                ? Optional.of(gain(goal, most))
                : Optional.empty();
    }

    private static Caution loss(GoalFinding goal, double most, String when) {
        double kgAWeek =
                -WeeklyChange.of(new Goal.EnergyADay(-most), goal.model()).kgAWeek();
        return Caution.stop(
                "loss_too_fast",
                "This goal eats " + Words.whole(-goal.change().kcalADay())
                        + " kcal a day less than the total. The most planned here is " + Words.down(most)
                        + " kcal, about " + Words.twoDecimals(Words.down(kgAWeek * PER_CENT) / PER_CENT)
                        + " kg a week at first: 1 % of body weight or 1 kg a week, 1000 kcal a day (500 from 65 years on) or 25 %"
                        + " of the total, whichever is least." + when
                        + " Slower keeps more muscle; faster belongs in the hands of a clinician.",
                LOSS);
    }

    private static String saysEarliest(GoalFinding goal) {
        return goal.earliest().map(earliest -> " " + earliest.says()).orElse("");
    }

    private static Caution gain(GoalFinding goal, SafeChange most) {
        String kcal = Double.isInfinite(most.kcalADay()) ? "" : " and " + Words.down(most.kcalADay()) + " kcal a day";
        return Caution.stop(
                "gain_too_fast",
                "This goal gains " + Words.oneDecimal(goal.change().percentAWeek()) + " % of body weight a week ("
                        + Words.signed(goal.change().kcalADay())
                        + " kcal a day), nearly all of it fat. The most planned here is "
                        + Words.twoDecimals(most.kgAWeek()) + " kg a week" + kcal
                        + ": 1 % of body weight; under a BMI of 18.5, where eating much more at once can be dangerous, at most"
                        + " 500 kcal a day, and from 30 on also 20 % of the total."
                        + goal.reach().map(reach -> saysWhen(goal, reach, most)).orElse(""),
                GAIN);
    }

    /** When the weight would be reached at the most advised. */
    private static String saysWhen(GoalFinding goal, Goal.ReachWeight reach, SafeChange most) {
        Body body = goal.eater().body();
        double kgAWeek = goal.band()
                .map(band -> band.mostPercent() / PER_CENT * body.weight().kg())
                .orElse(most.kgAWeek());
        double weeks = (reach.weight().kg() - body.weight().kg()) / kgAWeek;
        LocalDate day = reach.from().plusDays((long) Math.ceil(weeks * DAYS_A_WEEK));
        return " At the most that is advised " + Words.plain(reach.weight().kg()) + " kg would be reached on " + day
                + ".";
    }
}
