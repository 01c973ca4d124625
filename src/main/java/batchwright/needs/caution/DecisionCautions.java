package batchwright.needs.caution;

import batchwright.needs.goal.GoalFinding;
import batchwright.needs.safety.Action;
import batchwright.needs.safety.Decision;
import batchwright.needs.safety.Decisions;
import batchwright.person.Outcome;
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
        return Decisions.of(goal.eater(), action).stream()
                .map(DecisionCautions::caution)
                .toList();
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
