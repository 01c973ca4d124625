package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Foods that may be swapped or left out: the planner's answer to small random requests is the cheapest that plain enumeration finds over
 * all variants of all dishes, to the cent; and its plan passes audit.
 */
class SwapsBruteForceTest {
    /** -Dbatchwright.seeds=1000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 40);

    static LongStream seeds() {
        return LongStream.range(90_000, 90_000 + SEEDS);
    }

    private static PlanRequest request(long seed) {
        return SwapVariants.of(RandomProblems.of(seed), seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(SwapVariants.leastCost(request)));
        result.best()
                .ifPresent(plan -> assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed));
    }

    /** Requests without a plan say little, and swaps that never pay say nothing. */
    @Test
    void many_plans_swap_something() {
        long swapping = seeds().mapToObj(
                        seed -> new BatchPlanner().plan(request(seed)).best())
                .flatMap(Optional::stream)
                .filter(plan -> plan.batches().stream()
                        .anyMatch(batch -> !batch.dish().swaps().isEmpty()))
                .count();

        assertThat(swapping).isGreaterThan(SEEDS / 10);
    }
}
