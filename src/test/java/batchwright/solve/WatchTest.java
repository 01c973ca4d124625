package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.PlanResult;
import batchwright.plan.Proof;
import batchwright.plan.Watch;
import batchwright.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a search tells whoever watches, and that it stops when told to. */
class WatchTest {
    private static final class Notes implements Watch {
        private final List<Money> found = new ArrayList<>();
        private final List<Money> bounds = new ArrayList<>();
        private boolean stop;

        @Override
        public void found(Money cost) {
            found.add(cost);
        }

        @Override
        public void bound(Money bound) {
            bounds.add(bound);
        }

        @Override
        public boolean stop() {
            return stop;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void plans_get_cheaper_and_bounds_higher_and_neither_passes_the_optimum(long seed) {
        var notes = new Notes();

        PlanResult result = new BatchPlanner().plan(RandomProblems.of(seed), notes);

        assertThat(notes.found).isSortedAccordingTo((a, b) -> b.compareTo(a)).doesNotHaveDuplicates();
        assertThat(notes.bounds).isSorted().doesNotHaveDuplicates();
        if (result instanceof PlanResult.Planned planned) {
            Money cheapest = planned.plan().cost();
            assertThat(notes.found).isNotEmpty().last().isEqualTo(cheapest);
            assertThat(notes.bounds).allMatch(bound -> bound.compareTo(cheapest) <= 0);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void a_search_that_must_stop_at_once_claims_nothing_wrong(long seed) {
        var notes = new Notes();
        notes.stop = true;

        PlanResult early = new BatchPlanner().plan(RandomProblems.of(seed), notes);
        PlanResult full = new BatchPlanner().plan(RandomProblems.of(seed));

        if (early instanceof PlanResult.GaveUp gaveUp && full instanceof PlanResult.Planned planned) {
            Proof proof = gaveUp.proof();
            assertThat(proof.lowerBound()).isLessThanOrEqualTo(planned.plan().cost());
            gaveUp.best()
                    .ifPresent(best -> assertThat(best.cost())
                            .isGreaterThanOrEqualTo(planned.plan().cost()));
        }
    }
}
