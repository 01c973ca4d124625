package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Parts;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Menu;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleSupplier;

/**
 * The top of the search: which dishes are cooked. Branches on that alone; for each set of dishes that is worth it, the rest is
 * decided in a small model of these dishes only.
 */
final class DishChoice implements Completion<DaysSolution> {
    /** Steps of the hasty search over sets of dishes, and within each. */
    private static final long HASTY_SETS = 40;

    private static final long HASTY_STEPS = 500;

    /** Spent on a set of dishes before others have their turn; four times as much each next time. */
    /** Most that is spent on plans of one dish less: about half of the usual 30 seconds. */
    private static final long STEPS_WITH_ONE_LESS = 200_000;

    private static final long FIRST_STEPS = 2_000;

    private final TotalsDraft draft;
    private final Aim aim;
    private final Effort effort;
    private final Depth depth;
    private final List<Column> choices;
    private final Map<Set<Dish>, DishSetSearch> started = new HashMap<>();
    private DoubleSupplier leastOpenBound = () -> 0;

    private DishChoice(TotalsDraft draft, Aim aim, Effort effort, Depth depth) {
        this.draft = draft;
        this.aim = aim;
        this.effort = effort;
        this.depth = depth;
        this.choices = draft.menu().dishes().stream().map(draft::cookedColumn).toList();
    }

    /**
     * The whole search. First two quick ones for a good plan to measure others by: one in haste, and one among plans of one
     * dish less, whose sets are few. Then to the end.
     */
    static SearchResult<DaysSolution> search(PlanRequest request, Aim aim, Effort effort) {
        Effort haste = effort.limited(HASTY_SETS);
        var good = search(request, aim, Depth.EVERY_DAY_ALIKE, effort, haste, Optional.empty());
        if (request.mostDishes() > 1 && !effort.mustStop()) {
            PlanRequest fewer = request.withMostDishes(request.mostDishes() - 1);
            Effort some = effort.limited(STEPS_WITH_ONE_LESS);
            good = search(fewer, aim, Depth.THOROUGH, some, some, found(good));
        }
        return search(request, aim, Depth.THOROUGH, effort, effort, found(good));
    }

    private static SearchResult<DaysSolution> search(
            PlanRequest request,
            Aim aim,
            Depth depth,
            Effort effort,
            Effort overSets,
            Optional<Found<DaysSolution>> toBeat) {
        TotalsDraft draft = aim.complete(TotalsDraft.choosingDishes(request, new Menu(request)));
        var choice = new DishChoice(draft, aim, effort, depth);
        var search = new BranchAndBound<>(
                draft.model(), choice, toBeat.map(Found::cost).orElse(Double.POSITIVE_INFINITY), overSets::mustStop);
        choice.leastOpenBound = search::leastOpenBound;
        toBeat.map(Found::solution).ifPresent(search::startWith);
        var result = search.search();
        effort.count(result);
        return result;
    }

    @Override
    public Verdict<DaysSolution> complete(Point point, double cutoff) {
        Set<Dish> dishes = cooked(point.values());
        List<Part> parts = new ArrayList<>(Parts.allBut(choices, point));
        if (depth == Depth.EVERY_DAY_ALIKE) {
            return new Verdict<>(glimpse(dishes, cutoff), parts);
        }
        effort.proven(Math.min(point.bound(), leastOpenBound.getAsDouble()));
        DishSetSearch search = started.computeIfAbsent(dishes, set -> new DishSetSearch(totals(set), aim, effort));
        var result = search.goOn(Effort.inRound(point.round(), FIRST_STEPS), cutoff);
        if (result.state() == SearchResult.State.STOPPED) {
            // Other dishes first: they may give a plan against which these need no further look.
            parts.add(Parts.only(choices, point.values()).putOff(point.round() + 1, result.bound()));
        } else {
            started.remove(dishes);
        }
        return new Verdict<>(news(result), parts);
    }

    @Override
    public Optional<Found<DaysSolution>> tryOut(Point point, double cutoff) {
        return glimpse(cooked(point.values()), cutoff);
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

    private TotalsDraft totals(Set<Dish> dishes) {
        return aim.complete(TotalsDraft.cookingAll(draft.request(), new Menu(draft.request(), dishes)));
    }

    /** A plan with these dishes and the same containers on every day, if one is soon found. */
    private Optional<Found<DaysSolution>> glimpse(Set<Dish> dishes, double cutoff) {
        var menu = new Menu(draft.request(), dishes);
        TotalsDraft totals = aim.complete(TotalsDraft.everyDayAlike(draft.request(), menu));
        Effort little = effort.limited(HASTY_STEPS);
        var dayByDay = new DayByDay(totals, aim, little, Depth.EVERY_DAY_ALIKE);
        var result = new BranchAndBound<>(totals.model(), dayByDay, cutoff, little::mustStop).search();
        effort.count(result);
        return news(result);
    }

    private Optional<Found<DaysSolution>> news(SearchResult<DaysSolution> result) {
        Optional<Found<DaysSolution>> found = found(result);
        found.ifPresent(f -> effort.found(f.cost()));
        return found;
    }

    private static Optional<Found<DaysSolution>> found(SearchResult<DaysSolution> result) {
        return result.best().map(best -> new Found<>(result.cost(), best));
    }
}
