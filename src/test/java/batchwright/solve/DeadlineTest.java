package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Planner;
import java.util.List;
import java.util.function.LongPredicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A search ends soon after it is told to, wherever it is: while a model is made, within a relaxation, while layouts are listed. Counted
 * in work, so that it holds on every machine. Work that nobody is told of would not be seen by the count alone; but it takes memory, and
 * that is looked at, too.
 */
class DeadlineTest {
    /** Numbers looked at without asking: some hundredths of a second. */
    private static final long MOST_UNASKED = 30_000_000;

    /** Bytes taken without asking. */
    private static final long MOST_UNASKED_BYTES = 150_000_000;

    private static final List<String> EATERS = List.of("lifter-gaining", "parent-holding", "desk-cutting");

    /** Says when it is enough, and notes how long it was not asked. */
    private static final class Clock implements LongPredicate {
        private final com.sun.management.ThreadMXBean memory =
                (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
        private final long most;
        private long last;
        private long lastBytes = bytes();
        private long longest;
        private long mostBytes;

        Clock(long most) {
            this.most = most;
        }

        @Override
        public boolean test(long work) {
            longest = Math.max(longest, work - last);
            last = work;
            return note(work > most);
        }

        private boolean note(boolean enough) {
            mostBytes = Math.max(mostBytes, bytes() - lastBytes);
            lastBytes = bytes();
            return enough;
        }

        private long bytes() {
            return memory.getCurrentThreadAllocatedBytes();
        }
    }

    @ParameterizedTest(name = "{0} dishes, {1} days, {2} eaters: {3}")
    @CsvSource({
        "200, 5, 1, 0",
        "200, 5, 1, 3_000_000",
        "200, 5, 1, 100_000_000",
        "200, 14, 3, 10_000_000",
        "200, 14, 3, 500_000_000",
        "400, 5, 1, 30_000_000",
        "400, 5, 1, 800_000_000",
        "400, 28, 3, 100_000_000",
        "24, 28, 3, 100_000_000",
        "24, 28, 3, 500_000_000",
    })
    void a_search_ends_soon_after_it_is_told_to(int dishes, int days, int eaters, String most) {
        PlanRequest request = WideKitchens.request(dishes, days, EATERS.subList(0, eaters));
        var clock = new Clock(Long.parseLong(most.replace("_", "")));

        PlanResult result = BatchPlanner.asking(clock).plan(request);
        clock.note(true);

        assertThat(clock.longest).isLessThan(MOST_UNASKED);
        assertThat(clock.mostBytes).isLessThan(MOST_UNASKED_BYTES);
        assertThat(result).isInstanceOf(PlanResult.GaveUp.class);
        assertThat(result.plans()).allMatch(plan -> Audit.of(request, plan).passed());
    }

    @ParameterizedTest(name = "{0} dishes, {1} days, {2} eaters: {3}")
    @CsvSource({"200, 5, 1, 20_000_000", "24, 28, 3, 100_000_000"})
    void so_does_a_question_whether_there_is_any_plan(int dishes, int days, int eaters, String most) {
        PlanRequest request = WideKitchens.request(dishes, days, EATERS.subList(0, eaters));
        var clock = new Clock(Long.parseLong(most.replace("_", "")));

        Planner.Possible possible = BatchPlanner.asking(clock).possible(request);

        assertThat(clock.longest).isLessThan(MOST_UNASKED);
        assertThat(possible).isNotEqualTo(Planner.Possible.NO);
    }

    /** The clock says only when to end: what was found until then is the same, however often it was asked. */
    @ParameterizedTest
    @CsvSource({"100, 300_000_000", "100, 700_000_000"})
    void the_same_work_gives_the_same_plan(int dishes, String most) {
        PlanRequest request = WideKitchens.request(dishes, 5, EATERS.subList(0, 1));
        Planner planner = BatchPlanner.untilWork(Long.parseLong(most.replace("_", "")));

        List<Plan> once = planner.plan(request).plans();
        List<Plan> again = planner.plan(request).plans();

        assertThat(again.stream().map(DeadlineTest::decisions))
                .containsExactlyElementsOf(
                        once.stream().map(DeadlineTest::decisions).toList());
    }

    private static List<Object> decisions(Plan plan) {
        return List.of(plan.eaters(), plan.batches(), plan.shopping());
    }
}
