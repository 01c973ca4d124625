package batchwright.needs.caution;

import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.CappedGoal;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.safety.SafetyFigure;
import java.util.Optional;

/** Says that a change is planned more slowly than the profile asks for. */
public final class CappedCaution {
    private CappedCaution() {}

    /** @param planned what the goal that is planned means */
    public static Optional<Caution> of(CappedGoal goal, WeeklyChange planned) {
        return goal.asked()
                .map(asked -> Caution.warn(
                        asked.loses() ? "loss_slowed" : "gain_slowed",
                        asked.loses() ? saysLoss(asked, planned) : saysGain(asked, planned),
                        (asked.loses() ? SafetyFigure.LOSS_PERCENT_OF_TOTAL : SafetyFigure.GAIN_KCAL_A_DAY).source()));
    }

    private static String saysLoss(WeeklyChange asked, WeeklyChange planned) {
        return "The profile asks to lose " + Numerals.twoDecimals(-asked.percentAWeek()) + " % a week, "
                + Numerals.whole(-asked.kcalADay()) + " kcal a day less than the total. A deficit of "
                + Numerals.whole(-planned.kcalADay()) + " kcal is planned, the most here: "
                + Numerals.plain(SafetyFigure.LOSS_PERCENT_OF_TOTAL.value()) + " % of the total, and never more than "
                + Numerals.plain(SafetyFigure.LOSS_KCAL_A_DAY.value()) + " kcal ("
                + Numerals.plain(SafetyFigure.LOSS_KCAL_A_DAY_FROM_65.value()) + " from 65 years on). So it is about "
                + Numerals.twoDecimals(-planned.percentAWeek()) + " % a week. More activity leaves room for more.";
    }

    private static String saysGain(WeeklyChange asked, WeeklyChange planned) {
        return "The profile asks to gain " + Numerals.twoDecimals(asked.percentAWeek()) + " % a week, "
                + Numerals.whole(asked.kcalADay())
                + " kcal a day above the total. At a low weight it starts in steps, because"
                + " eating much more at once can be dangerous: " + Numerals.whole(planned.kcalADay())
                + " kcal above it are planned, the most here, about " + Numerals.twoDecimals(planned.percentAWeek())
                + " % a week.";
    }
}
