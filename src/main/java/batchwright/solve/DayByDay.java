package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.BranchAndBound;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.SearchResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lays totals out over days. Given how many containers of each dish every eater gets, it looks for the cheapest plan that keeps
 * every rule on every day: first over the most even layout alone; and, when the search has fixed all container counts and
 * that was not enough, over every layout.
 */
final class DayByDay implements Completion<DaysSolution> {
    private static final int MOST_LAYOUTS = 20_000;
    /** Enough to find an even one. */
    private static final int FIRST_LAYOUTS = 50;

    private static final double HALF_A_CENT = 0.5;

    private final TotalsDraft totals;
    private final Aim aim;
    private final Effort effort;
    private final Map<List<Integer>, Attempt> attempts = new HashMap<>();

    /**
     * What is known of one vector of container counts.
     *
     * @param found the best plan found for it
     * @param thorough whether every layout was looked at: nothing but {@code found} is cheaper than the cutoff was
     */
    private record Attempt(Optional<Found<DaysSolution>> found, boolean thorough) {}

    DayByDay(TotalsDraft totals, Aim aim, Effort effort) {
        this.totals = totals;
        this.aim = aim;
        this.effort = effort;
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
        if (attempt.thorough || reached(attempt, bound)) {
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
        return attempt.found.isPresent() && attempt.found.get().cost() <= bound + HALF_A_CENT;
    }

    /** The cheapest plan over the most even layout. */
    private Attempt quick(Map<Seat, Map<Dish, Integer>> containers, double cutoff) {
        Map<Seat, List<LikeDays>> groups = new LinkedHashMap<>();
        for (Seat seat : totals.request().seats()) {
            var layouts = layouts(seat, containers, FIRST_LAYOUTS);
            if (layouts.isEmpty()) {
                return new Attempt(Optional.empty(), true);
            }
            groups.put(seat, layouts.get(0));
        }
        return new Attempt(cheapest(new Layout(containers, groups), cutoff), false);
    }

    /** The cheapest plan over every layout, below the cutoff. */
    private Attempt thorough(Map<Seat, Map<Dish, Integer>> containers, Attempt attempt, double bound, double cutoff) {
        Optional<Found<DaysSolution>> best = attempt.found;
        double below = Math.min(cutoff, best.map(Found::cost).orElse(cutoff));
        List<Map<Seat, List<LikeDays>>> combinations = List.of(Map.of());
        for (Seat seat : totals.request().seats()) {
            combinations = extended(combinations, seat, layouts(seat, containers, MOST_LAYOUTS));
        }
        for (Map<Seat, List<LikeDays>> groups : combinations) {
            var found = cheapest(new Layout(containers, groups), below);
            if (found.isPresent()) {
                best = found;
                below = found.get().cost();
            }
            if (below <= bound + HALF_A_CENT) {
                break;
            }
        }
        return new Attempt(best, true);
    }

    private List<Map<Seat, List<LikeDays>>> extended(
            List<Map<Seat, List<LikeDays>>> combinations, Seat seat, List<List<LikeDays>> layouts) {
        List<Map<Seat, List<LikeDays>>> longer = new ArrayList<>();
        for (var combination : combinations) {
            for (var days : layouts) {
                if (longer.size() >= MOST_LAYOUTS) {
                    effort.leftSomethingOut();
                    return longer;
                }
                Map<Seat, List<LikeDays>> next = new LinkedHashMap<>(combination);
                next.put(seat, days);
                longer.add(next);
            }
        }
        return longer;
    }

    private List<List<LikeDays>> layouts(Seat seat, Map<Seat, Map<Dish, Integer>> containers, int limit) {
        var found = DayLayouts.atMost(
                limit,
                Lookup.get(containers, seat),
                totals.request().days(),
                seat.eater().wishes().containersADay());
        if (limit == MOST_LAYOUTS && found.size() > limit) {
            effort.leftSomethingOut();
        }
        return found.stream().map(Layout::grouped).toList();
    }

    private Optional<Found<DaysSolution>> cheapest(Layout layout, double cutoff) {
        DaysDraft draft = aim.complete(new DaysDraft(totals.request(), totals.menu(), layout));
        var result = new BranchAndBound<>(draft.model(), new DealOut(draft), cutoff, effort::mustStop).search();
        effort.spend(result.nodes());
        if (result.state() == SearchResult.State.STOPPED) {
            effort.leftSomethingOut();
        }
        return result.best().map(best -> new Found<>(result.cost(), best));
    }
}
