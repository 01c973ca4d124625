package batchwright.solve;

import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.SearchResult;
import java.util.Optional;

/**
 * What the totals of one set of dishes prove by themselves, days left out of account: with a good plan to measure by, most sets of
 * several eaters are closed by this alone, in a small part of the time that their days would take.
 */
final class SetBound {
    /** Totals that take longer are left: their days are looked at, where a plan may be found. */
    private static final long MOST_STEPS = 20_000;

    private final BranchAndBound<double[]> search;
    private final Effort effort;
    private long counted;
    private double bound = Double.NEGATIVE_INFINITY;
    private boolean ended;

    /** @param effort where each slice ends */
    SetBound(TotalsDraft totals, Effort effort) {
        this.effort = effort;
        this.search = BranchAndBound.withCuts(
                totals.model(),
                // What is whole up to rounding counts: dropped because of rounding, it would be no bound.
                (point, cutoff) -> Completion.Verdict.closed(totals.model().costOf(point.values()), point.values()),
                Double.POSITIVE_INFINITY,
                effort);
    }

    /** Goes on for one slice. */
    void raise(double cutoff) {
        search.lowerCutoff(cutoff);
        run();
    }

    /** Goes on for one slice; the cheapest totals that were found. */
    Optional<double[]> cheapest() {
        return run().best();
    }

    private SearchResult<double[]> run() {
        SearchResult<double[]> result = search.search();
        effort.count(result.nodes() - counted);
        counted = result.nodes();
        bound = Math.max(bound, result.bound());
        ended = result.state() == SearchResult.State.DONE || counted > MOST_STEPS;
        return result;
    }

    /** No plan with just these dishes costs less; the cutoff when none is cheaper than that. */
    double bound() {
        return bound;
    }

    /** Whether totals have nothing more to say. */
    boolean hasEnded() {
        return ended;
    }
}
