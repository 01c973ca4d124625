package batchwright.needs.caution;

import batchwright.food.Allergen;
import batchwright.food.origin.Origin;
import batchwright.needs.evidence.Numerals;
import batchwright.needs.goal.GoalFinding;
import batchwright.needs.target.Targets;
import batchwright.person.Avoided;
import batchwright.person.HealthEffect;
import batchwright.person.HealthQuestion;
import java.util.Optional;
import java.util.Set;

/** Where a yes limits how far a goal may go, without forbidding it. */
final class AnswerLimits {
    private static final double SLOW_PERCENT_A_WEEK = 0.5;
    private static final int CARBOHYDRATE_G = 130;
    private static final Set<Allergen> GLUTEN = Set.of(Allergen.WHEAT, Allergen.GLUTEN);

    private final GoalFinding goal;
    private final Targets targets;

    AnswerLimits(GoalFinding goal, Targets targets) {
        this.goal = goal;
        this.targets = targets;
    }

    /** What is said where the goal or target goes too far for a yes to this question. */
    Optional<String> refusal(HealthQuestion question) {
        if (question.has(HealthEffect.SLOW_LOSS)) {
            return fastLoss();
        }
        if (question.has(HealthEffect.CARBOHYDRATE_130_G)) {
            return littleCarbohydrate();
        }
        return question.has(HealthEffect.NO_GLUTEN) ? gluten() : Optional.empty();
    }

    private Optional<String> fastLoss() {
        double percent = -goal.change().percentAWeek();
        return Numerals.above(percent, SLOW_PERCENT_A_WEEK)
                ? Optional.of(
                        "This goal loses " + Numerals.twoDecimals(percent)
                                + " % of weight a week; here more than 0.5 % is not planned. Choose a slower goal, and ask your doctor.")
                : Optional.empty();
    }

    private Optional<String> littleCarbohydrate() {
        double least = targets.carbohydrate().grams();
        return Numerals.below(least, CARBOHYDRATE_G)
                ? Optional.of("This target can leave as little as " + Numerals.whole(least)
                        + " g of carbohydrate a day; here less than 130 g is not planned. Ask your doctor.")
                : Optional.empty();
    }

    private Optional<String> gluten() {
        return leavesOutGluten(goal.eater().wishes().avoided())
                ? Optional.empty()
                : Optional.of(
                        "The profile does not avoid it, so no plan is made: add gluten_free, or wheat and gluten, to avoid. Your doctor"
                                + " or dietitian knows what else.");
    }

    private static boolean leavesOutGluten(Avoided avoided) {
        return avoided.allergens().containsAll(GLUTEN)
                || avoided.diets().stream().anyMatch(diet -> diet.bars().contains(Origin.GLUTEN_CEREAL));
    }
}
