package batchwright.solve.together;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Seat;
import batchwright.solve.BatchPlanner;
import batchwright.solve.BruteForce;
import batchwright.solve.Outcome;
import batchwright.solve.RandomProblems;
import batchwright.solve.RandomShop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small random kitchens for several eaters, every purchase, menu and fill enumerated: no plan is below the optimum, no bound above. */
class TogetherBruteForceTest {
    private static final long WORK = 500_000_000;

    /** -Dbatchwright.seeds=3000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 32);

    static Stream<PlanRequest> requests() {
        return LongStream.range(0, SEEDS)
                .boxed()
                .flatMap(seed -> Stream.of(RandomProblems.of(seed), RandomShop.of(seed, RandomProblems.of(seed))))
                .filter(request -> request.seats().size() > 1 && request.days() > 1)
                .map(request -> request.withBudget(Optional.empty()));
    }

    private static PlanResult decomposed(PlanRequest request, int threads) {
        return new TogetherPlanner(new AtOnce(threads), WORK, 0).plan(request);
    }

    @ParameterizedTest
    @MethodSource("requests")
    void a_plan_by_parts_passes_the_audit_and_the_optimum_is_between_bound_and_cost(PlanRequest request) {
        OptionalLong least = BruteForce.leastCost(request);
        PlanResult result = decomposed(request, 1);

        result.best().ifPresent(plan -> {
            assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed);
            assertThat(least).isPresent();
            assertThat(plan.cost().minor()).isGreaterThanOrEqualTo(least.orElseThrow());
        });
        if (least.isPresent()) {
            assertThat(result).isNotInstanceOf(PlanResult.NoPlan.class);
            assertThat(result.proof().lowerBound().minor()).isLessThanOrEqualTo(least.getAsLong());
        }
    }

    static Stream<PlanRequest> few() {
        return requests().limit(6);
    }

    @ParameterizedTest
    @MethodSource("few")
    void a_few_eaters_have_the_plan_that_enumeration_finds(PlanRequest request) {
        PlanResult result = new TogetherPlanner(new AtOnce(1), 8 * WORK).plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(BruteForce.leastCost(request)));
    }

    /** The bound of one eater, where packs are so small that they hardly count, is below what is proven and not far. */
    @Test
    void the_bound_of_one_is_below_the_cheapest_by_worth_and_near_it() {
        double bounds = 0;
        double costs = 0;
        for (PlanRequest request : requests().limit(6).toList()) {
            for (Seat seat : request.seats()) {
                var forOne = new ForOne(request, WORK, () -> false);
                PlanResult exact = BatchPlanner.untilWork(WORK)
                        .plan(request.withSeats(List.of(seat)).withKitchen(ByWorth.of(request.kitchen())));
                if (exact.best().isPresent()) {
                    long bound = forOne.bound(seat).orElseThrow();
                    assertThat(bound)
                            .isLessThanOrEqualTo(exact.best().get().cost().minor());
                    bounds += bound;
                    costs += exact.best().get().cost().minor();
                }
            }
        }

        assertThat(bounds).isGreaterThan(0.8 * costs);
    }

    /** How often the heuristic finds a plan where there is one, and how much too dear all of them are. */
    @Test
    void most_plans_by_parts_are_found_and_near_the_optimum() {
        int some = 0;
        int found = 0;
        long cost = 0;
        long optimum = 0;
        for (PlanRequest request : requests().toList()) {
            OptionalLong least = BruteForce.leastCost(request);
            PlanResult result = decomposed(request, 1);
            some += least.isPresent() ? 1 : 0;
            if (result.best().isPresent()) {
                found++;
                cost += result.best().get().cost().minor();
                optimum += least.orElseThrow();
            }
        }

        assertThat(some).isGreaterThan(5);
        assertThat(found).isGreaterThan(some * 8 / 10);
        assertThat((double) cost / optimum).isBetween(1.0, 1.1);
    }

    @ParameterizedTest
    @MethodSource("larger")
    void the_plan_does_not_depend_on_the_threads(PlanRequest request) {
        PlanResult one = decomposed(request, 1);
        PlanResult more = decomposed(request, 5);

        assertThat(more.best().map(plan -> plan.first().shopping()))
                .isEqualTo(one.best().map(plan -> plan.first().shopping()));
        assertThat(more.best().map(plan -> plan.first().eaters()))
                .isEqualTo(one.best().map(plan -> plan.first().eaters()));
        assertThat(more.proof().lowerBound()).isEqualTo(one.proof().lowerBound());
    }

    static Stream<PlanRequest> larger() {
        return LongStream.range(0, 8)
                .mapToObj(RandomProblems::larger)
                .filter(request -> request.seats().size() > 2 && request.days() > 1)
                .map(request -> request.withBudget(Optional.empty()));
    }
}
