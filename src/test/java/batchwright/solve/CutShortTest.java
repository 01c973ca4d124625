package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whenever a search is cut short, the plans that it answers with pass the audit: no pack in them could stay in the shop. */
class CutShortTest {
    private static final int SEEDS = 60;
    private static final List<String> EATERS = List.of("lifter-gaining", "desk-cutting", "parent-holding");

    private static void assertSound(PlanRequest request, PlanResult result) {
        for (Plan plan : result.plans()) {
            assertThat(Audit.of(request, plan).failures()).isEmpty();
        }
        assertThat(result.plans()).isSortedAccordingTo((a, b) -> a.cost().compareTo(b.cost()));
        result.best().ifPresent(best -> assertThat(result.proof().lowerBound()).isLessThanOrEqualTo(best.cost()));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, SEEDS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void for_random_kitchens(long seed) {
        PlanRequest request = RandomProblems.larger(seed);
        for (long work = 100_000; work < 30_000_000; work *= 3) {
            assertSound(request, BatchPlanner.untilWork(work + seed * 1_000).plan(request));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {50_000_000, 100_000_000, 200_000_000, 400_000_000, 800_000_000, 1_600_000_000})
    void for_several_starter_eaters(long work) {
        for (int eaters = 2; eaters <= EATERS.size(); eaters++) {
            PlanRequest request = WideKitchens.request(24, 5, EATERS.subList(0, eaters));
            assertSound(request, BatchPlanner.untilWork(work).plan(request));
        }
    }
}
