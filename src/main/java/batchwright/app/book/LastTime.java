package batchwright.app.book;

import batchwright.app.Refused;
import batchwright.app.Workspace;
import batchwright.book.KeptPlan.KeptBatch;
import batchwright.food.Kitchen;
import java.util.List;

/** The dishes of the plan that was kept last before today. */
public final class LastTime {
    private LastTime() {}

    /**
     * Those that are still known.
     *
     * @throws Refused when no plan was kept before
     */
    public static List<String> dishes(Workspace workspace) {
        Kitchen kitchen = workspace.kitchen();
        return workspace.keptPlans().plans().stream()
                .filter(plan -> plan.cookingDay().isBefore(workspace.cookingDay()))
                .findFirst()
                .orElseThrow(() -> Refused.because(
                        "no plan was kept before " + workspace.cookingDay(),
                        "Name the dishes of last time, or keep a plan when you make one."))
                .batches()
                .stream()
                .map(KeptBatch::dish)
                .distinct()
                .filter(dish -> kitchen.dish(dish).isPresent())
                .toList();
    }
}
