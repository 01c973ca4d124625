package batchwright.solve;

import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.SearchResult;

/** The search over one set of dishes, all of them cooked. It can be left and gone on with. */
final class DishSetSearch {
    private final BranchAndBound<DaysSolution> search;
    private final Effort effort;
    private long stepsLeft;
    private long counted;

    DishSetSearch(TotalsDraft totals, Aim aim, Effort whole) {
        this.effort = whole.until(() -> stepsLeft-- <= 0);
        var dayByDay = new DayByDay(totals, aim, effort, Depth.THOROUGH);
        this.search = new BranchAndBound<>(totals.model(), dayByDay, Double.POSITIVE_INFINITY, effort::mustStop);
    }

    /** Goes on for at most so many steps, looking for a plan below the cutoff. */
    SearchResult<DaysSolution> goOn(long steps, double cutoff) {
        stepsLeft = steps;
        search.lowerCutoff(cutoff);
        var result = search.search();
        effort.count(result.nodes() - counted);
        counted = result.nodes();
        return result;
    }
}
