package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Watch;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.rule.Menu;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the totals of one set of dishes prove for two eaters, against the same totals with nothing whole, which can only cost less. */
class SetBoundTest {
    private static final long STEPS = 1_000;

    private static Menu only(PlanRequest request, String dishes) {
        Set<String> names = Set.of(dishes.split(" "));
        var menu = new Menu(request);
        Set<Dish> some = menu.dishes().stream()
                .filter(dish -> names.contains(dish.id()))
                .collect(Collectors.toSet());
        assertThat(some).hasSameSizeAs(names);
        return menu.only(request, some);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lentil_ragu peanut_stew",
                "peanut_stew split_pea_dal"
            })
    void a_slice_proves_no_less_than_the_relaxation(String dishes) {
        PlanRequest request = WideKitchens.request(24, 5, List.of("lifter-gaining", "desk-cutting"));
        var effort = new Effort(new Meter(work -> false), Watch.NONE);
        Menu menu = only(request, dishes);
        double relaxed = new RelaxedOptimum(
                        Aim.LEAST_COST
                                .complete(TotalsDraft.cookingAll(request, menu, effort))
                                .model(),
                        effort)
                .cost()
                .orElseThrow();

        Effort slice = effort.limited(STEPS);
        var bound = new SetBound(Aim.LEAST_COST.complete(TotalsDraft.cookingAll(request, menu, slice)), slice);
        bound.raise(Double.POSITIVE_INFINITY);

        assertThat(bound.bound()).isGreaterThan(relaxed);
    }
}
