package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.AdviceBand;
import batchwright.needs.goal.GoalFinding;
import java.util.ArrayList;
import java.util.List;

/** Cautions that follow from how a goal lies to the advised band. None of them stops planning. */
final class BandCautions {
    private BandCautions() {}

    static List<Caution> of(GoalFinding goal) {
        List<Caution> cautions = new ArrayList<>();
        goal.band().ifPresent(band -> {
            if (band.isExceededBy(goal.change(), goal.total())) {
                cautions.add(goal.change().gains() ? gainFast(goal, band) : lossFast(goal, band));
            } else if (band.isNotReachedBy(goal.change())
                    && goal.eater().experience().isPresent()) {
                cautions.add(slow(goal, band));
            }
        });
        return cautions;
    }

    private static Caution gainFast(GoalFinding goal, AdviceBand band) {
        return Caution.warn(
                "gain_fast",
                rate(goal) + " is more than is advised " + says(goal, band) + ". Gaining faster mostly adds fat.",
                new Citation(band.source().text() + "; Helms et al., Sports Med Open 2023"));
    }

    private static Caution lossFast(GoalFinding goal, AdviceBand band) {
        return Caution.warn(
                "loss_fast",
                rate(goal) + " is more than is advised " + says(goal, band) + ". Slower keeps more muscle.",
                band.source());
    }

    /** Said only to those who say that they train: for others the band is no aim. */
    private static Caution slow(GoalFinding goal, AdviceBand band) {
        return Caution.warn(
                "slower_than_advised",
                rate(goal) + " is less than is advised " + says(goal, band)
                        + ". That is safe; it takes longer, and is hard to tell from the ups and downs of water on a scale.",
                band.source());
    }

    private static String rate(GoalFinding goal) {
        return (goal.change().gains() ? "Gaining " : "Losing ")
                + Numerals.twoDecimals(Math.abs(goal.change().percentAWeek())) + " % of body weight a week ("
                + Numerals.signed(goal.change().kcalADay()) + " kcal a day)";
    }

    private static String says(GoalFinding goal, AdviceBand band) {
        return band.says(goal.eater().body(), goal.total());
    }
}
