package batchwright.solve;

import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.StepBudget;
import batchwright.solve.mip.Stop;
import java.util.Optional;
import java.util.function.Function;

/** The search over one set of dishes, all of them cooked. It can be left and gone on with. */
final class DishSetSearch {
    /** Spent in the first slice; twice as much in each further one. */
    private static final long FIRST_STEPS = 2_000;

    /** The same where totals come first: their bound rises soon, or slowly. */
    private static final long FIRST_STEPS_OF_TOTALS = 250;

    private final Function<Stop, TotalsDraft> totals;
    private final Aim aim;
    private final Effort effort;
    private final boolean totalsFirst;
    private Optional<SetBound> totalsAlone = Optional.empty();
    private Optional<BranchAndBound<DaysSolution>> search = Optional.empty();
    private final StepBudget budget = new StepBudget(0);
    private final TimeSlices slices;
    private long counted;

    /**
     * @param totals the model, asked for when the search begins
     * @param totalsFirst whether to see what totals alone prove before any day is looked at
     */
    DishSetSearch(Function<Stop, TotalsDraft> totals, boolean totalsFirst, Aim aim, Effort whole) {
        this.totals = totals;
        this.totalsFirst = totalsFirst;
        this.slices = new TimeSlices(budget, totalsFirst ? FIRST_STEPS_OF_TOTALS : FIRST_STEPS);
        this.aim = aim;
        this.effort = whole.within(budget);
    }

    /** Not worth going on before this time of the search over sets: others come first; never, once all was seen. */
    long resumeAt() {
        return slices.resumeAt();
    }

    /** Another search over sets begins; its clock stands at 0. */
    void restartClock() {
        slices.restartClock();
    }

    /**
     * Goes on for one slice, looking for a plan below the cutoff. Then others may spend as much before the next.
     *
     * @param relaxations solved by the search over sets
     */
    SearchResult<DaysSolution> runSlice(double cutoff, long relaxations) {
        long before = effort.nodes();
        slices.begin();
        SearchResult<DaysSolution> result = totalsHaveEnded() ? days(cutoff) : totals(cutoff);
        if (result.state() == SearchResult.State.STOPPED) {
            slices.end(relaxations, effort.nodes() - before);
        } else {
            slices.finish();
        }
        return result;
    }

    private boolean totalsHaveEnded() {
        return !totalsFirst || totalsAlone.filter(SetBound::hasEnded).isPresent();
    }

    private SearchResult<DaysSolution> totals(double cutoff) {
        SetBound mine = totalsAlone.orElseGet(() -> new SetBound(totals.apply(effort), effort));
        totalsAlone = Optional.of(mine);
        mine.raise(cutoff);
        return mine.bound() >= cutoff ? SearchResult.nothingBelow(cutoff) : SearchResult.stoppedAt(mine.bound());
    }

    private SearchResult<DaysSolution> days(double cutoff) {
        BranchAndBound<DaysSolution> mine = search.orElseGet(this::begin);
        search = Optional.of(mine);
        mine.lowerCutoff(cutoff);
        SearchResult<DaysSolution> result = mine.search();
        effort.count(result.nodes() - counted);
        counted = result.nodes();
        result.found().ifPresent(found -> effort.found(found));
        return result;
    }

    private BranchAndBound<DaysSolution> begin() {
        TotalsDraft draft = totals.apply(effort);
        var dayByDay = new DayByDay(draft, aim, effort, Depth.THOROUGH);
        return BranchAndBound.withCuts(draft.model(), dayByDay, Double.POSITIVE_INFINITY, effort);
    }
}
