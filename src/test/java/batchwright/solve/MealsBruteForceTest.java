package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.audit.AuditReport;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Boxes that can be too small, breakfasts, the same dish not too often, snacks that go together: the planner's answer to small
 * random requests is what plain enumeration finds, to the cent; and its plan passes audit.
 */
class MealsBruteForceTest {
    /** -Dbatchwright.seeds=3000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 200);

    static LongStream seeds() {
        return LongStream.range(70_000, 70_000 + SEEDS);
    }

    private static PlanRequest request(long seed) {
        return MealVariants.of(RandomProblems.of(seed), seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costs_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        PlanResult result = new BatchPlanner().plan(request);

        assertThat(Outcome.of(result)).isEqualTo(Outcome.of(BruteForce.leastCost(request)));
        result.best()
                .ifPresent(plan -> assertThat(Audit.of(request, plan).checks()).allMatch(AuditReport.Check::passed));
    }

    /** Requests without a plan say little, and rules that never bind say nothing. */
    @Test
    void many_requests_have_a_plan_and_in_many_these_rules_bind() {
        long planned = 0;
        long bound = 0;
        for (long seed : seeds().toArray()) {
            OptionalLong with = BruteForce.leastCost(request(seed));
            OptionalLong without = BruteForce.leastCost(RandomProblems.of(seed));
            planned += with.isPresent() ? 1 : 0;
            bound += without.isPresent() && !with.equals(without) ? 1 : 0;
        }

        assertThat(planned).isGreaterThan(SEEDS / 8);
        assertThat(bound).isGreaterThan(SEEDS / 8);
    }
}
