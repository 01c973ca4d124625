package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.EnergyPerKg;
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
    private static final Citation LOSS =
            Citation.designChoice("set by Helms et al. 2014 (0.5-1 % a week), NICE (0.5-1 kg a week), NHLBI (500-1000 kcal a"
                    + " day) and, for older adults, ESPEN (about 500 kcal a day)");
    private static final Citation GAIN =
            Citation.designChoice("twice the 0.5 % a week that Iraki et al. 2019 advise at most; in steps below BMI 18.5, at most"
                    + " 20 % and 500 kcal from BMI 30 on");

    private TooFastCautions() {}

    /** @param says when a weight by a date could be reached; not asked for where that weight is refused */
    static Optional<Caution> of(GoalFinding goal, boolean weightIsRefused) {
        Body body = goal.eater().body();
        WeeklyChange change = goal.change();
        SafeChange most =
                change.loses() ? SafeChange.ofLoss(body, goal.total()) : SafeChange.ofGain(body, goal.total());
        if (!most.isExceededBy(change.kgAWeek(), change.kcalADay())) {
            return Optional.empty();
        }
        double kcal = Math.min(most.kcalADay(), WeeklyChange.kcalADayOf(most.kgAWeek(), EnergyPerKg.RULE_KCAL));
        double kgAWeek = WeeklyChange.kgAWeekOf(kcal);
        String says = "The most planned here is " + Words.down(kcal) + " kcal, about "
                + Words.twoDecimals(Words.down(kgAWeek * PER_CENT) / PER_CENT) + " kg a week: ";
        String when = goal.reach()
                .filter(reach -> !weightIsRefused)
                .map(reach -> " So " + saysWhen(reach, body, kgAWeek) + " at the earliest.")
                .orElse("");
        return Optional.of(change.loses() ? loss(change, says, when) : gain(change, says, when));
    }

    private static Caution loss(WeeklyChange change, String most, String when) {
        return Caution.stop(
                "loss_too_fast",
                "This goal eats " + Words.whole(-change.kcalADay()) + " kcal a day less than the total. " + most
                        + "1 % of body weight or 1 kg a week, 1000 kcal a day (500 from 65 years on) or 25 % of the total,"
                        + " whichever is least." + when
                        + " Slower keeps more muscle; faster belongs in the hands of a clinician.",
                LOSS);
    }

    private static Caution gain(WeeklyChange change, String most, String when) {
        return Caution.stop(
                "gain_too_fast",
                "This goal gains " + Words.oneDecimal(change.percentAWeek()) + " % of body weight a week ("
                        + Words.signed(change.kcalADay()) + " kcal a day), nearly all of it fat. " + most
                        + "1 % of body weight a week; under a BMI of 18.5, where eating much more at once can be dangerous, also"
                        + " 500 kcal a day, and from 30 on 20 % of the total too, whichever is least." + when,
                GAIN);
    }

    /** When the weight would be reached at another rate. */
    private static String saysWhen(Goal.ReachWeight reach, Body body, double kgAWeek) {
        double weeks = Math.abs(reach.weight().kg() - body.weight().kg()) / kgAWeek;
        LocalDate day = reach.from().plusDays((long) Math.ceil(weeks * DAYS_A_WEEK));
        return Words.plain(reach.weight().kg()) + " kg would be reached on " + day;
    }
}
