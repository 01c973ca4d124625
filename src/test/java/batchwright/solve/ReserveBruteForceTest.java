package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Purchase;
import java.math.BigDecimal;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** With room to spare the planner's answer to small random requests is what enumeration finds, to the cent; and its plan passes audit. */
class ReserveBruteForceTest {
    /** -Dbatchwright.seeds=1000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 60);

    static LongStream seeds() {
        return LongStream.range(210_000, 210_000 + SEEDS);
    }

    /** Once or twice as much again: whole numbers for the enumeration. */
    private static PlanRequest with(PlanRequest request, long seed) {
        return withReserve(request, BigDecimal.valueOf(1 + seed % 2));
    }

    private static PlanRequest withReserve(PlanRequest request, BigDecimal reserve) {
        return request.withKitchen(
                request.kitchen().with(request.kitchen().shops().withReserve(reserve)));
    }

    private static void agrees(PlanRequest request) {
        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(BruteForce.leastCost(request)));
        result.best()
                .ifPresent(
                        plan -> assertThat(Audit.of(request, plan).failures()).isEmpty());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds(long seed) {
        agrees(with(RandomProblems.of(seed), seed));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds_with_loose_goods_and_dates(long seed) {
        agrees(with(RandomShop.of(seed), seed));
    }

    /** Or the tests above say nothing. */
    @Test
    void room_often_costs_something_and_never_saves() {
        long dearer = seeds().filter(seed -> {
                    PlanRequest request = RandomProblems.of(seed);
                    PlanResult without = new BatchPlanner().plan(request);
                    PlanResult with = new BatchPlanner().plan(with(request, seed));
                    with.best()
                            .ifPresent(plan -> assertThat(plan.cost())
                                    .isGreaterThanOrEqualTo(
                                            without.best().orElseThrow().cost()));
                    return !Outcome.of(with).equals(Outcome.of(without));
                })
                .count();

        assertThat(dearer).isGreaterThan(SEEDS / 4);
    }

    /** A plan made without room for a request that wants it does not pass, where some food is used up. */
    @Test
    void audit_asks_for_the_room() {
        long refused = seeds().filter(seed -> {
                    PlanRequest request = RandomProblems.of(seed);
                    return new BatchPlanner()
                            .plan(request)
                            .best()
                            .filter(plan -> !Audit.of(withReserve(request, BigDecimal.ONE), plan)
                                    .passed())
                            .isPresent();
                })
                .count();

        assertThat(refused).isGreaterThan(SEEDS / 4);
    }

    /** Of what is weighed. */
    @Test
    void something_is_left_of_each_food_that_is_cooked_by_weight() {
        PlanRequest request = withReserve(RandomProblems.of(210_004), new BigDecimal("0.05"));

        new BatchPlanner().plan(request).best().ifPresent(plan -> {
            for (Purchase line : plan.shopping()) {
                boolean weighed = plan.batches().stream()
                        .flatMap(batch -> batch.fills().stream())
                        .flatMap(fill -> fill.portions().stream())
                        .anyMatch(portion -> !portion.part().pieces()
                                && portion.rawGrams() > 0
                                && portion.part().shares().containsKey(line.food()));
                BigDecimal all = line.boughtGrams().add(request.kitchen().pantryGrams(line.food()));
                assertThat(all.compareTo(line.usedGrams()) > 0 || !weighed).isTrue();
            }
        });
    }
}
