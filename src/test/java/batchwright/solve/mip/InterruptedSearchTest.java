package batchwright.solve.mip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A search that is stopped, and one that goes on, against the same search in one go. */
class InterruptedSearchTest {
    private static final int COLUMNS = 12;

    /** Least cost that covers four needs with whole numbers of twelve packs. */
    private static MipModel covering(long seed) {
        var random = new SplittableRandom(seed);
        var model = new MipModel();
        var cost = new Expression();
        var needs = new Expression[] {new Expression(), new Expression(), new Expression(), new Expression()};
        for (int i = 0; i < COLUMNS; i++) {
            Column column = model.column("pack " + i, 0, 9, true, 0);
            cost.plus(column, random.nextInt(50, 400));
            for (Expression need : needs) {
                need.plus(column, random.nextInt(0, 100));
            }
        }
        for (Expression need : needs) {
            model.atLeast("need", need, 457);
        }
        model.minimise(cost, 1);
        return model;
    }

    @Test
    void a_search_that_must_stop_at_once_has_a_bound_and_ends() {
        SearchResult<double[]> stopped = BranchAndBound.plain(covering(1), Double.POSITIVE_INFINITY, () -> true)
                .search();
        SearchResult<double[]> done = BranchAndBound.plain(covering(1), Double.POSITIVE_INFINITY, () -> false)
                .search();

        assertThat(stopped.state()).isEqualTo(SearchResult.State.STOPPED);
        assertThat(stopped.bound()).isPositive().isLessThanOrEqualTo(done.cost());
        assertThat(stopped.nodes()).isLessThan(done.nodes());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void stopped_after_every_node_it_finds_the_same_cost_and_its_bound_never_falls(long seed) {
        double cost = BranchAndBound.plain(covering(seed), Double.POSITIVE_INFINITY, () -> false)
                .search()
                .cost();
        var oneNode = new StepBudget(1);
        var search = BranchAndBound.plain(covering(seed), Double.POSITIVE_INFINITY, Stop.NEVER.within(oneNode));

        SearchResult<double[]> result = search.search();
        int pauses = 0;
        while (result.state() == SearchResult.State.STOPPED) {
            oneNode.refill(1);
            SearchResult<double[]> next = search.search();
            assertThat(next.bound()).isGreaterThanOrEqualTo(result.bound());
            assertThat(next.bound()).isLessThanOrEqualTo(cost);
            result = next;
            pauses++;
        }

        assertThat(pauses).isGreaterThan(2);
        assertThat(result.state()).isEqualTo(SearchResult.State.DONE);
        assertThat(result.cost()).isCloseTo(cost, within(1e-6));
    }

    @Test
    void with_the_cutoff_lowered_to_the_least_cost_nothing_cheaper_is_found() {
        double cost = BranchAndBound.plain(covering(3), Double.POSITIVE_INFINITY, () -> false)
                .search()
                .cost();
        var search = BranchAndBound.plain(covering(3), Double.POSITIVE_INFINITY, () -> false);
        search.lowerCutoff(cost);

        SearchResult<double[]> result = search.search();

        assertThat(result.state()).isEqualTo(SearchResult.State.DONE);
        assertThat(result.best()).isEmpty();
        assertThat(result.bound()).isEqualTo(cost);
    }
}
