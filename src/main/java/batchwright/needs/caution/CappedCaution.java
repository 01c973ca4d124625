package batchwright.needs.caution;

import batchwright.needs.evidence.Words;
import batchwright.needs.goal.CappedGoal;
import batchwright.needs.goal.WeeklyChange;
import batchwright.needs.safety.Figure;
import java.util.Optional;

/** Says that a loss is planned more slowly than the profile asks for. */
public final class CappedCaution {
    private CappedCaution() {}

    /** @param planned what the goal that is planned means */
    public static Optional<Caution> of(CappedGoal goal, WeeklyChange planned) {
        return goal.asked()
                .map(asked -> Caution.warn(
                        "loss_slowed",
                        says(asked, planned),
                        Figure.LOSS_PERCENT_OF_TOTAL.source()));
    }

    private static String says(WeeklyChange asked, WeeklyChange planned) {
        return "The profile asks to lose " + Words.twoDecimals(-asked.percentAWeek()) + " % a week, "
                + Words.whole(-asked.kcalADay()) + " kcal a day less than the total. A deficit of "
                + Words.whole(-planned.kcalADay()) + " kcal is planned, "
                + Words.plain(Figure.LOSS_PERCENT_OF_TOTAL.value()) + " % of the total, the most here: "
                + Words.twoDecimals(-planned.percentAWeek()) + " % a week. More activity leaves room for more.";
    }
}
