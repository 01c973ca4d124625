package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Watch;
import batchwright.solve.mip.RelaxedOptimum;
import batchwright.solve.rule.Menu;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Totals of two eaters who share two dishes: what they prove, and that a point found on the way proves nothing. */
class SetBoundTest {
    private static final double TENTH_OF_A_CENT = 0.1;

    private final PlanRequest request = WideKitchens.request(24, 5, List.of("lifter-gaining", "desk-cutting"));
    private final Effort effort = new Effort(new Meter(work -> false), Watch.NONE);

    private TotalsDraft totals() {
        Set<Dish> two = request.kitchen().dishes().values().stream()
                .filter(dish -> Set.of("lentil_ragu", "peanut_stew").contains(dish.id()))
                .collect(Collectors.toSet());
        return Aim.LEAST_COST.complete(TotalsDraft.cookingAll(request, new Menu(request).only(request, two), effort));
    }

    @Test
    void what_was_found_on_the_way_ends_nothing() {
        double relaxed = new RelaxedOptimum(totals().model(), effort).cost().orElseThrow();
        var cutShort = new SetBound(totals(), effort.limited(20));

        cutShort.raise(Double.POSITIVE_INFINITY);

        assertThat(cutShort.hasEnded()).isFalse();
        assertThat(cutShort.bound()).isGreaterThanOrEqualTo(relaxed);
    }

    @Test
    void to_the_end_the_bound_is_the_cost_of_the_cheapest_totals() {
        var bound = new SetBound(totals(), effort);
        double[] cheapest = bound.cheapest().orElseThrow();

        assertThat(bound.hasEnded()).isTrue();
        assertThat(bound.bound()).isCloseTo(totals().model().costOf(cheapest), within(TENTH_OF_A_CENT));
    }
}
