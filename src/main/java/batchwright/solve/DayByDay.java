package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Expression;
import batchwright.solve.mip.SearchResult;
import batchwright.solve.rule.Budget;
import batchwright.solve.rule.Menu;
import batchwright.solve.rule.Rule;
import batchwright.solve.rule.Rules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Lays totals out over days. Given how many containers of each dish an eater gets, it looks for the cheapest plan that keeps
 * every rule on every day: first over the most even layout alone; and, when the search has fixed all container counts and
 * that was not enough, over every layout.
 */
final class DayByDay implements Completion<DaysSolution> {
    /** Relaxations spent on one even layout before the search goes on; the exact answer is still found later. */
    private static final long QUICK_NODES = 600;

    private static final int MOST_LAYOUTS = 20_000;
    private static final double CENT = 0.5;

    private final TotalsDraft totals;
    private final boolean anyCost;
    private final BooleanSupplier stop;
    private final Map<List<Integer>, Attempt> attempts = new HashMap<>();
    private long nodes;
    private boolean complete = true;

    /**
     * What is known of one vector of container counts.
     *
     * @param found the best plan found for it
     * @param exact nothing cheaper exists for these counts below {@code below}
     */
    private record Attempt(Optional<Found<DaysSolution>> found, boolean exact, double below) {}

    DayByDay(TotalsDraft totals, boolean anyCost, BooleanSupplier stop) {
        this.totals = totals;
        this.anyCost = anyCost;
        this.stop = stop;
    }

    long nodes() {
        return nodes;
    }

    /** Whether every layout could be looked at where that was needed for the proof. */
    boolean complete() {
        return complete;
    }

    @Override
    public Verdict<DaysSolution> complete(
            double[] values, double[] lower, double[] upper, double bound, double cutoff) {
        List<Integer> counts = new ArrayList<>();
        Map<Seat, Map<Dish, Integer>> containers = new LinkedHashMap<>();
        int free = -1;
        for (Seat seat : totals.request().seats()) {
            Map<Dish, Integer> mine = new LinkedHashMap<>();
            containers.put(seat, mine);
            for (Dish dish : totals.menu().dishes(seat)) {
                Column column = totals.containersColumn(seat, dish);
                int count = (int) Math.rint(values[column.index()]);
                counts.add(count);
                if (count > 0) {
                    mine.put(dish, count);
                }
                if (lower[column.index()] < upper[column.index()] && free < 0) {
                    free = column.index();
                }
            }
        }
        Attempt attempt = attempts.computeIfAbsent(counts, c -> quick(containers, cutoff));
        if (reached(attempt, bound) || (attempt.exact && attempt.below >= cutoff)) {
            return Verdict.closed(attempt.found);
        }
        if (free >= 0) {
            return Verdict.split(attempt.found, free);
        }
        attempt = thorough(containers, attempt, bound, cutoff);
        attempts.put(counts, attempt);
        return Verdict.closed(attempt.found);
    }

    private static boolean reached(Attempt attempt, double bound) {
        return attempt.found.isPresent() && attempt.found.get().cost() <= bound + CENT;
    }

    /** The cheapest plan over the most even layout, or the best that a few relaxations find. */
    private Attempt quick(Map<Seat, Map<Dish, Integer>> containers, double cutoff) {
        Map<Seat, List<Map<Dish, Integer>>> days = new LinkedHashMap<>();
        for (Seat seat : totals.request().seats()) {
            var layouts = layouts(seat, containers, 50);
            if (layouts.isEmpty()) {
                return new Attempt(Optional.empty(), true, Double.POSITIVE_INFINITY);
            }
            days.put(seat, layouts.get(0));
        }
        long[] left = {QUICK_NODES};
        var result = solve(new Layout(containers, days), cutoff, () -> left[0]-- <= 0 || stop.getAsBoolean());
        return new Attempt(found(result), false, cutoff);
    }

    /** The cheapest plan over every layout, below the cutoff. */
    private Attempt thorough(Map<Seat, Map<Dish, Integer>> containers, Attempt attempt, double bound, double cutoff) {
        double below = cutoff;
        Optional<Found<DaysSolution>> best = Optional.empty();
        List<Map<Seat, List<Map<Dish, Integer>>>> combinations = List.of(Map.of());
        for (Seat seat : totals.request().seats()) {
            combinations = extended(combinations, seat, layouts(seat, containers, MOST_LAYOUTS));
        }
        for (Map<Seat, List<Map<Dish, Integer>>> days : combinations) {
            if (stop.getAsBoolean()) {
                break;
            }
            var result = solve(new Layout(containers, days), below, stop);
            if (result.best().isPresent()) {
                best = found(result);
                below = result.cost();
            }
            if (below <= bound + CENT) {
                break;
            }
        }
        return new Attempt(best.isPresent() ? best : attempt.found, true, cutoff);
    }

    private List<Map<Seat, List<Map<Dish, Integer>>>> extended(
            List<Map<Seat, List<Map<Dish, Integer>>>> combinations, Seat seat, List<List<Map<Dish, Integer>>> layouts) {
        List<Map<Seat, List<Map<Dish, Integer>>>> longer = new ArrayList<>();
        for (var combination : combinations) {
            for (var days : layouts) {
                if (longer.size() >= MOST_LAYOUTS) {
                    complete = false;
                    return longer;
                }
                Map<Seat, List<Map<Dish, Integer>>> next = new LinkedHashMap<>(combination);
                next.put(seat, days);
                longer.add(next);
            }
        }
        return longer;
    }

    private List<List<Map<Dish, Integer>>> layouts(Seat seat, Map<Seat, Map<Dish, Integer>> containers, int limit) {
        PlanRequest request = totals.request();
        var found = DayLayouts.atMost(
                limit,
                Lookup.get(containers, seat),
                request.days(),
                seat.eater().wishes().containersADay());
        complete &= limit < MOST_LAYOUTS || found.size() <= limit;
        return found;
    }

    private SearchResult<double[]> solveDraft(DaysDraft draft, double cutoff, BooleanSupplier halt) {
        var result = BranchAndBound.plain(draft.model(), cutoff, halt).search();
        nodes += result.nodes();
        return result;
    }

    private SearchResult<DaysSolution> solve(Layout layout, double cutoff, BooleanSupplier halt) {
        DaysDraft draft = draft(totals.request(), totals.menu(), layout);
        if (anyCost) {
            draft.model().minimise(new Expression(), 1);
        }
        var result = solveDraft(draft, cutoff, halt);
        return new SearchResult<>(
                result.state(),
                result.best().map(values -> new DaysSolution(draft, values)),
                result.cost(),
                result.bound(),
                result.nodes());
    }

    static DaysDraft draft(PlanRequest request, Menu menu, Layout layout) {
        var draft = new DaysDraft(request, menu, layout);
        for (Rule rule : Rules.ALL) {
            rule.addTo(draft);
        }
        draft.model().minimise(Budget.cost(draft), 1);
        return draft;
    }

    private static Optional<Found<DaysSolution>> found(SearchResult<DaysSolution> result) {
        return result.best().map(solution -> new Found<>(result.cost(), solution));
    }
}
