package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.safety.SafeChange;
import batchwright.person.Goal;
import java.util.Optional;
import java.util.function.Function;

/** Refuses a change that is faster than any that is planned, and says how fast would do. */
final class TooFastCautions {
    private static final double PER_CENT = 100;
    /** How far two solved intakes may differ and still count as the same. */
    private static final double SOLVED_KCAL = 0.01;

    static final String LOSS_TOO_FAST = "loss_too_fast";

    private static final double UNDERWEIGHT_BMI = 18.5;
    private static final Citation LOSS = Citation.designChoice(
            "set by Helms et al. 2014 (0.5-1 % a week), NICE (0.5-1 kg a week), NHLBI (500-1000 kcal a"
                    + " day) and, for older adults, ESPEN (about 500 kcal a day)");
    private static final Citation GAIN = Citation.designChoice(
            "twice the 0.5 % a week that Iraki et al. 2019 advise at most; in steps below BMI 18.5, at most"
                    + " 20 % and 500 kcal from BMI 30 on");

    private TooFastCautions() {}

    /** @param when what is said of the day that would do */
    static Optional<Caution> of(GoalFinding goal, Function<GoalFinding, String> when) {
        if (goal.change().loses()) {
            double most = goal.lossLimit().mostDeficitKcal(goal.model().start());
            return -goal.change().kcalADay() > most + SOLVED_KCAL
                    ? Optional.of(loss(goal, most, when.apply(goal)))
                    : Optional.empty();
        }
        SafeChange most = SafeChange.ofGain(goal.eater().body(), goal.total());
        return goal.change().gains()
                        && most.isExceededBy(
                                goal.change().kgAWeek(), goal.change().kcalADay())
                ? Optional.of(gain(goal, most, when.apply(goal)))
                : Optional.empty();
    }

    private static Caution loss(GoalFinding goal, double most, String when) {
        double kgAWeek =
                -WeeklyChange.of(new Goal.EnergyADay(-most), goal.model()).kgAWeek();
        return Caution.stop(
                LOSS_TOO_FAST,
                asked(goal, "less than a quarter of the total")
                                .orElse("This goal eats "
                                        + Numerals.whole(-goal.change().kcalADay())
                                        + " kcal a day less than the total.")
                        + " The most planned here is " + Numerals.down(most)
                        + " kcal less, about " + Numerals.twoDecimals(Numerals.down(kgAWeek * PER_CENT) / PER_CENT)
                        + " kg a week at first: 1 % of body weight or 1 kg a week, 1000 kcal a day (500 from 65 years on) or 25 %"
                        + " of the total, whichever is least." + when
                        + " Slower keeps more muscle; faster belongs in the hands of a clinician.",
                LOSS);
    }

    private static Caution gain(GoalFinding goal, SafeChange most, String when) {
        boolean thin = Numerals.below(goal.eater().body().bmi(), UNDERWEIGHT_BMI);
        String kcal = Double.isInfinite(most.kcalADay())
                ? ""
                : " or " + Numerals.down(most.kcalADay()) + " kcal a day above the total, whichever is less";
        return Caution.stop(
                "gain_too_fast",
                asked(goal, "more than four times the total")
                                .orElse("This goal gains "
                                        + Numerals.oneDecimal(goal.change().percentAWeek())
                                        + " % of body weight a week in the first four weeks ("
                                        + Numerals.signed(goal.change().kcalADay()) + " kcal a day)"
                                        + (thin ? "." : ", nearly all of it fat."))
                        + " The most planned here is " + Numerals.twoDecimals(most.kgAWeek()) + " kg a week" + kcal
                        + ": 1 % of body weight; under a BMI of 18.5, where eating much more at once can be dangerous, at most"
                        + " 500 kcal a day, and from 30 on also 20 % of the total." + when,
                GAIN);
    }

    /** For a goal that none of the intakes looked at leads to. */
    private static Optional<String> asked(GoalFinding goal, String intake) {
        if (!goal.isOutOfReach()) {
            return Optional.empty();
        }
        return Optional.of(goal.reach()
                        .map(reach ->
                                Numerals.plain(reach.weight().kg()) + " kg cannot be reached by " + reach.by() + ": it")
                        .orElse("This goal cannot be reached: it")
                + " would take " + intake + ".");
    }
}
