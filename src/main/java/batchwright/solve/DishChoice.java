package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Parts;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The top of the search: which dishes are cooked. Branches on that alone; for each set of dishes that is worth it, the rest is
 * decided in a small model of these dishes only.
 */
final class DishChoice implements Completion<DaysSolution> {
    /** Steps of the hasty search over sets of dishes, and within each. */
    private static final long HASTY_SETS = 40;

    private static final long HASTY_STEPS = 500;

    private final TotalsDraft draft;
    private final Aim aim;
    private final Effort effort;
    private final Depth depth;
    private final List<Column> choices;

    private DishChoice(TotalsDraft draft, Aim aim, Effort effort, Depth depth) {
        this.draft = draft;
        this.aim = aim;
        this.effort = effort;
        this.depth = depth;
        this.choices = draft.menu().dishes().stream().map(draft::cookedColumn).toList();
    }

    /** The whole search: first in haste, for a good plan to measure others by; then to the end. */
    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort) {
        TotalsDraft draft = aim.complete(TotalsDraft.choosingDishes(request, new Menu(request)));
        Effort haste = effort.limited(HASTY_SETS);
        var hasty = new BranchAndBound<>(
                        draft.model(),
                        new DishChoice(draft, aim, effort, Depth.EVERY_DAY_ALIKE),
                        Double.POSITIVE_INFINITY,
                        haste::mustStop)
                .search();
        var search = new BranchAndBound<>(
                draft.model(), new DishChoice(draft, aim, effort, Depth.THOROUGH), hasty.cost(), effort::mustStop);
        effort.count(hasty);
        hasty.best().ifPresent(search::startWith);
        var result = search.search();
        effort.count(result);
        return result;
    }

    @Override
    public Verdict<DaysSolution> complete(
            double[] values, double[] lower, double[] upper, double bound, double cutoff) {
        Look look = look(cooked(values), depth, cutoff);
        if (depth == Depth.THOROUGH && look.stopped) {
            effort.leaveOut(Math.max(bound, look.bound));
        }
        return new Verdict<>(look.found, Parts.allBut(choices, values, lower, upper));
    }

    @Override
    public Optional<Found<DaysSolution>> tryOut(double[] values, double[] lower, double[] upper, double cutoff) {
        return look(cooked(values), Depth.EVERY_DAY_ALIKE, cutoff).found;
    }

    private Set<Dish> cooked(double[] values) {
        Set<Dish> cooked = new LinkedHashSet<>();
        for (Dish dish : draft.menu().dishes()) {
            if (values[draft.cookedColumn(dish).index()] > 0.5) {
                cooked.add(dish);
            }
        }
        return cooked;
    }

    /**
     * What a search over one set of dishes gave.
     *
     * @param found a plan below the cutoff
     * @param stopped whether it was told to stop
     * @param bound nothing in it costs less
     */
    private record Look(Optional<Found<DaysSolution>> found, boolean stopped, double bound) {}

    private Look look(Set<Dish> dishes, Depth howDeep, double cutoff) {
        Menu menu = new Menu(draft.request(), dishes);
        TotalsDraft totals = aim.complete(
                howDeep == Depth.EVERY_DAY_ALIKE
                        ? TotalsDraft.everyDayAlike(draft.request(), menu)
                        : TotalsDraft.cookingAll(draft.request(), menu));
        Effort mine = howDeep == Depth.THOROUGH ? effort : effort.limited(HASTY_STEPS);
        var dayByDay = new DayByDay(totals, aim, mine, howDeep);
        var result = new BranchAndBound<>(totals.model(), dayByDay, cutoff, mine::mustStop).search();
        effort.count(result);
        return new Look(
                result.best().map(best -> new Found<>(result.cost(), best)),
                result.state() == SearchResult.State.STOPPED,
                result.bound());
    }
}
