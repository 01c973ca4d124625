package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.CountsSearch.State;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Subproblems;
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
    private final TotalsDraft totals;
    private final LayoutModels models;
    private final Effort effort;
    private final Depth depth;
    private final List<Column> counts;
    private long relaxations;
    private final Map<Map<Seat, Map<Dish, Integer>>, CountsSearch> searches = new HashMap<>();

    DayByDay(TotalsDraft totals, Aim aim, Effort effort, Depth depth) {
        this.depth = depth;
        this.totals = totals;
        this.models = new LayoutModels(totals.request(), totals.menu(), aim, depth, effort);
        this.effort = effort;
        this.counts = totals.request().seats().stream()
                .flatMap(seat -> totals.menu().dishes(seat).stream().map(dish -> totals.containersColumn(seat, dish)))
                .toList();
    }

    @Override
    public Verdict<DaysSolution> complete(Point point, double cutoff) {
        CountsSearch search = search(point.values(), cutoff);
        if (search.state() != State.THOROUGH && search.reached(point.bound())) {
            return Verdict.closed(search.found());
        }
        List<Subproblem> subproblems = new ArrayList<>(Subproblems.allBut(counts, point));
        if (depth == Depth.THOROUGH && search.state() != State.THOROUGH) {
            if (isFixed(point.lower(), point.upper())) {
                return layoutsOf(search, point, cutoff);
            }
            subproblems.add(Subproblems.only(counts, point.values()));
        }
        return new Verdict<>(search.found(), subproblems);
    }

    /** In a node where the counts are fixed: looks at their layouts, and leaves the rest for the next slice. */
    private Verdict<DaysSolution> layoutsOf(CountsSearch search, Point point, double cutoff) {
        if (search.state() == State.UNFINISHED) {
            relaxations += search.runSlice(cutoff, point.bound(), point.relaxations());
        }
        if (search.state() == State.TOO_MANY) {
            effort.ledger().leaveOut(point.bound());
        }
        boolean open = search.state() == State.UNFINISHED && !search.reached(point.bound());
        return new Verdict<>(
                search.found(),
                open ? List.of(Subproblems.only(counts, point.values()).bounded(search.bound())) : List.of());
    }

    @Override
    public Optional<Found<DaysSolution>> heuristic(Point point, double cutoff) {
        return search(point.values(), cutoff).found();
    }

    /** The search over layouts of fixed counts is the same in every node that has them, and decides when they are looked at. */
    @Override
    public long postponedUntil(double[] lower, double[] upper) {
        if (depth == Depth.EVERY_DAY_ALIKE || !isFixed(lower, upper)) {
            return 0;
        }
        CountsSearch search = searches.get(containers(lower));
        if (search == null) {
            return 0;
        }
        return search.state() == State.THOROUGH ? NEVER : search.resumeAt();
    }

    @Override
    public long relaxations() {
        return relaxations;
    }

    private boolean isFixed(double[] lower, double[] upper) {
        for (Column count : counts) {
            if (lower[count.index()] < upper[count.index()]) {
                return false;
            }
        }
        return true;
    }

    /** The search over layouts of these counts; for a new one the heuristic has run. */
    private CountsSearch search(double[] values, double cutoff) {
        return searches.computeIfAbsent(containers(values), these -> {
            var search = new CountsSearch(totals.request(), these, models, effort);
            relaxations += search.heuristic(cutoff);
            return search;
        });
    }

    /** How many containers of each dish every eater gets; dishes not served are left out. */
    private Map<Seat, Map<Dish, Integer>> containers(double[] values) {
        Map<Seat, Map<Dish, Integer>> containers = new LinkedHashMap<>();
        for (Seat seat : totals.request().seats()) {
            Map<Dish, Integer> mine = new LinkedHashMap<>();
            containers.put(seat, mine);
            for (Dish dish : totals.menu().dishes(seat)) {
                int count = (int) Math.rint(totals.containers(seat, dish).value(values));
                if (count > 0) {
                    mine.put(dish, count);
                }
            }
        }
        return containers;
    }
}
