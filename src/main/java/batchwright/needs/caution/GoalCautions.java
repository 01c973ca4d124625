package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.evidence.Words;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.target.Targets;
import batchwright.person.Eater;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    public static List<Caution> of(GoalFinding goal, Targets targets) {
        GoalCautions check = new GoalCautions(goal);
        check.cautions.addAll(EndCautions.of(goal));
        check.tooFast();
        check.cautions.addAll(DecisionCautions.of(goal));
        check.cautions.addAll(ReachCautions.of(goal));
        if (check.cautions.stream().noneMatch(Caution::stopsPlanning)) {
            check.cautions.addAll(BandCautions.of(goal));
        }
        check.cautions.addAll(IntakeCautions.of(goal, targets.day().energyAimKcal()));
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

    private void tooFast() {
        TooFastCautions.of(goal, cautions.stream().anyMatch(Caution::stopsPlanning))
                .ifPresent(cautions::add);
    }

    private void proteinVeryHigh() {
        double asked = eater.adjustments().proteinGPerKg().orElse(0);
        if (Words.above(asked, PROTEIN_MOST_G_PER_KG)) {
            cautions.add(Caution.warn(
                    "protein_very_high",
                    "The profile asks for " + Words.plain(asked)
                            + " g of protein per kg. The highest range among the sources used"
                            + " here is 2.3-3.1 g per kg of fat-free mass; ask a doctor or dietitian before eating more.",
                    Citation.designChoice("above every range of ISSN 2017 and Helms et al. 2014")));
        }
    }
}
