package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Cautions that follow from the goal and from the target it leads to. */
public final class GoalCautions {
    private static final double PROTEIN_MOST_G_PER_KG = 3.5;

    private final Eater eater;
    private final GoalFinding goal;
    private final List<Caution> cautions = new ArrayList<>();

    private GoalCautions(GoalFinding goal) {
        this.eater = goal.eater();
        this.goal = goal;
    }

    /** Those that stop, or, where none does, all. */
    public static List<Caution> of(GoalFinding goal, Targets targets) {
        List<Caution> all = all(goal, targets, PlannedDay::says);
        List<Caution> stop = all.stream().filter(Caution::stopsPlanning).toList();
        return stop.isEmpty() ? all : stop;
    }

    /** Whether any stops. */
    static boolean stop(GoalFinding goal, Targets targets) {
        return all(goal, targets, other -> "").stream().anyMatch(Caution::stopsPlanning);
    }

    /** @param when what is said of the day that would do, for a goal whose day is too near */
    private static List<Caution> all(GoalFinding goal, Targets targets, Function<GoalFinding, String> when) {
        GoalCautions check = new GoalCautions(goal);
        check.cautions.addAll(EndCautions.of(goal));
        check.tooFast(when);
        check.cautions.addAll(DecisionCautions.of(goal));
        check.cautions.addAll(ReachCautions.of(goal));
        if (check.cautions.stream().noneMatch(Caution::stopsPlanning)) {
            check.cautions.addAll(BandCautions.of(goal));
        }
        check.cautions.addAll(
                IntakeCautions.of(goal, targets.day().energyAimKcal(), check.isTooFast() ? other -> "" : when));
        check.proteinVeryHigh();
        return eachCodeOnce(check.cautions);
    }

    /** Of two with one code the one that stops, else the first. */
    private static List<Caution> eachCodeOnce(List<Caution> cautions) {
        Map<String, Caution> byCode = new LinkedHashMap<>();
        cautions.forEach(caution -> byCode.merge(
                caution.code(),
                caution,
                (first, second) -> second.stopsPlanning() && !first.stopsPlanning() ? second : first));
        return List.copyOf(byCode.values());
    }

    /** No day is named for a weight that is refused itself. */
    private void tooFast(Function<GoalFinding, String> when) {
        boolean weightIsRefused = cautions.stream().anyMatch(Caution::stopsPlanning);
        TooFastCautions.of(goal, weightIsRefused ? other -> "" : when).ifPresent(cautions::add);
    }

    private boolean isTooFast() {
        return cautions.stream().anyMatch(caution -> caution.code().equals(TooFastCautions.LOSS_TOO_FAST));
    }

    private void proteinVeryHigh() {
        double asked = eater.adjustments().proteinGPerKg().orElse(0);
        if (Numerals.above(asked, PROTEIN_MOST_G_PER_KG)) {
            cautions.add(Caution.warn(
                    "protein_very_high",
                    "The profile asks for " + Numerals.plain(asked)
                            + " g of protein per kg. The highest range among the sources used"
                            + " here is 2.3-3.1 g per kg of fat-free mass; ask a doctor or dietitian before eating more.",
                    Citation.designChoice("above every range of ISSN 2017 and Helms et al. 2014")));
        }
    }
}
