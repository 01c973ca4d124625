package batchwright.solve;

import batchwright.food.Dish;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.mip.Subproblems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;

/**
 * The top of the search: which dishes are cooked. Branches on that alone; for each set of dishes that is worth it, the rest is
 * decided in a small model of these dishes only.
 */
final class DishChoice implements Completion<DaysSolution> {
    private final TotalsDraft draft;
    private final DishSets sets;
    private final Depth depth;
    private final List<Column> choices;
    private final Effort effort;
    private DoubleSupplier leastOpenBound = () -> 0;
    private long relaxations;
    private boolean asked;
    /** Of several eaters a set takes so long that those with a lesser bound come first, wherever the search comes to it. */
    private final boolean leastBoundFirst;

    private final Set<Set<Dish>> seen = new HashSet<>();

    /**
     * @param draft the totals, with only "is it cooked" to be decided
     * @param effort told what is proven
     */
    DishChoice(TotalsDraft draft, DishSets sets, Depth depth, Effort effort) {
        this.draft = draft;
        this.depth = depth;
        this.sets = sets;
        this.effort = effort;
        this.leastBoundFirst = draft.request().seats().size() > 1;
        this.choices = draft.menu().dishes().stream().map(draft::cookedColumn).toList();
    }

    /** @param bound no plan in what is still to be looked at costs less */
    void setOpenBound(DoubleSupplier bound) {
        leastOpenBound = bound;
    }

    @Override
    public Verdict<DaysSolution> complete(Point point, double cutoff) {
        asked = true;
        List<Subproblem> subproblems = new ArrayList<>(othersThan(point));
        if (depth == Depth.EVERY_DAY_ALIKE) {
            return new Verdict<>(heuristic(point, cutoff), subproblems);
        }
        effort.proven(Math.min(point.bound(), leastOpenBound.getAsDouble()));
        if (leastBoundFirst && seen.add(cooked(point.values()))) {
            subproblems.add(only(point, point.bound()));
            return new Verdict<>(Optional.empty(), subproblems);
        }
        long before = effort.nodes();
        var result = sets.search(cooked(point.values())).runSlice(cutoff, point.relaxations());
        relaxations += effort.nodes() - before;
        if (result.state() == SearchResult.State.STOPPED) {
            // Other dishes first: they may give a plan against which these need no further look.
            subproblems.add(only(point, result.bound()));
        }
        return new Verdict<>(result.found(), subproblems);
    }

    /** Whether any set of dishes was looked at. */
    boolean wasAsked() {
        return asked;
    }

    @Override
    public Optional<Found<DaysSolution>> heuristic(Point point, double cutoff) {
        return sets.heuristic(cooked(point.values()), cutoff);
    }

    @Override
    public long postponedUntil(double[] lower, double[] upper) {
        return isDecided(lower, upper) ? sets.search(cooked(lower)).resumeAt() : 0;
    }

    /** Whether these bounds leave one set only. */
    boolean isDecided(double[] lower, double[] upper) {
        return choices.stream().allMatch(c -> lower[c.index()] == upper[c.index()]);
    }

    /** Every set but that of a point. */
    List<Subproblem> othersThan(Point point) {
        return Subproblems.allBut(choices, point);
    }

    /** The set of a point, of which so much is known. */
    Subproblem only(Point point, double bound) {
        return Subproblems.only(choices, point.values()).bounded(bound);
    }

    @Override
    public long relaxations() {
        return relaxations;
    }

    /** The set that these values cook. */
    Set<Dish> cooked(double[] values) {
        Set<Dish> cooked = new LinkedHashSet<>();
        for (Dish dish : draft.menu().dishes()) {
            if (values[draft.cookedColumn(dish).index()] > 0.5) {
                cooked.add(dish);
            }
        }
        return cooked;
    }
}
