package batchwright.solve.whole;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Variety;
import batchwright.solve.BatchPlanner;
import batchwright.solve.MealVariants;
import batchwright.solve.Outcome;
import batchwright.solve.RandomProblems;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Random small kitchens with meals, boxes, energy density, and dishes that must differ: the same cost as outside solvers find on the
 * model of the whole plan, each row and column of which has a meaning.
 */
class MealsModelTest {
    private static final long FIRST = 70_000;
    private static final long SEEDS = Long.getLong("batchwright.seeds", 100);

    @Test
    void plans_with_meals_cost_what_outside_solvers_find() {
        List<String> differences = new ArrayList<>();
        int planned = 0;
        for (long seed = FIRST; seed < FIRST + SEEDS; seed++) {
            PlanRequest any = MealVariants.of(RandomProblems.of(seed), seed);
            PlanResult cheapest = new BatchPlanner().plan(any);
            if (cheapest.best().isEmpty()) {
                continue;
            }
            Set<Dish> lastTime = cheapest.best().stream()
                    .flatMap(plan -> plan.first().batches().stream())
                    .map(batch -> batch.dish())
                    .collect(Collectors.toSet());
            PlanRequest other = any.withVariety(new Variety(1 + (int) (seed % 2), seed % 3 == 0 ? lastTime : Set.of()));
            PlanResult result = new BatchPlanner().plan(other);

            planned += result.best().isPresent() ? 1 : 0;
            differences.addAll(CrossSolverTest.differences("seed " + seed, Outcome.of(result), other));
            assertThat(WholeModel.of(other).names()).contains("dish count");
        }

        assertThat(differences).isEmpty();
        assertThat(planned).isGreaterThan((int) SEEDS / 20);
    }
}
