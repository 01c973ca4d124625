package batchwright.needs.caution;

import batchwright.needs.evidence.Citation;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.safety.Action;
import batchwright.needs.safety.Decision;
import batchwright.needs.safety.Decisions;
import batchwright.person.Health.Answer;
import batchwright.person.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Cautions that follow from the tables of decisions: age, BMI, body fat, the goal, and what has to be answered first. */
final class DecisionCautions {
    private DecisionCautions() {}

    static List<Caution> of(GoalFinding goal) {
        Action action = Action.of(
                goal.eater().body(),
                goal.total(),
                goal.change().kgAWeek(),
                goal.change().kcalADay());
        List<Caution> cautions = new ArrayList<>(Decisions.of(goal.eater(), action).stream()
                .map(DecisionCautions::caution)
                .toList());
        if (goal.eater().health().doctorAgrees() == Answer.NO
                && cautions.stream().noneMatch(Caution::stopsPlanning)) {
            cautions.add(doctorDisagrees(!goal.isHold()));
        }
        return cautions;
    }

    /** A no counts even where no table asks for it. */
    private static Caution doctorDisagrees(boolean stops) {
        return new Caution(
                "doctor_disagrees",
                "The profile says that no doctor or dietitian agrees to this goal. "
                        + (stops
                                ? "So no plan is made for it: choose with them what your weight should do."
                                : "Talk with them before you follow this."),
                stops,
                Citation.designChoice("a clinician who knows the eater knows more than these tables"));
    }

    private static Caution caution(Decision decision) {
        return new Caution(
                decision.reason().code(),
                decision.says(),
                decision.outcome() != Outcome.WARN,
                decision.reason().hides(),
                decision.asks(),
                decision.source());
    }
}
