package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import batchwright.solve.RandomProblems;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Random requests without a plan: the set that is found is smallest, and so is each cure. */
class RandomClashesTest {
    /** -Dbatchwright.clashes=200 looks at more. */
    private static final long REQUESTS = Long.getLong("batchwright.clashes", 20);

    static LongStream seedsWithoutPlan() {
        return LongStream.iterate(0, seed -> seed + 1)
                .filter(seed -> Checked.possible(request(seed)) == Possible.NO)
                .limit(REQUESTS);
    }

    private static PlanRequest request(long seed) {
        return RandomProblems.of(seed).withBudget(Optional.empty());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsWithoutPlan")
    void the_set_and_its_cures_are_smallest(long seed) {
        PlanRequest request = request(seed);

        List<Cure> cures = Checked.cures(request);

        assertThat(cures).extracting(c -> c.dial().says()).doesNotHaveDuplicates();
    }
}
