package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Column;
import batchwright.solve.mip.Completion;
import batchwright.solve.mip.Parts;
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

    /** Spent on the most even layout before the search goes on. */
    private static final long QUICK_STEPS = 300;

    /** Spent on all layouts of fixed counts before they are put off for the first time; four times as much each next time. */
    private static final long FIRST_STEPS = 20_000;

    private static final double HALF_A_CENT = 0.5;

    private final TotalsDraft totals;
    private final Aim aim;
    private final Effort effort;
    private final Map<Map<Seat, Map<Dish, Integer>>, Attempt> attempts = new HashMap<>();

    /**
     * What is known of one vector of container counts.
     *
     * @param found the best plan found for it
     * @param looked how many layouts were looked at to the end
     * @param state how much of it was looked at
     */
    private record Attempt(Optional<Found<DaysSolution>> found, int looked, State state) {
        /** How much was looked at. */
        enum State {
            UNFINISHED,
            /** Every layout: nothing but {@code found} is cheaper than the cutoff was. */
            THOROUGH,
            /** There are too many layouts, and all that are ever looked at were. */
            TOO_MANY
        }

        boolean thorough() {
            return state == State.THOROUGH;
        }
    }

    private final Depth depth;

    DayByDay(TotalsDraft totals, Aim aim, Effort effort, Depth depth) {
        this.depth = depth;
        this.totals = totals;
        this.aim = aim;
        this.effort = effort;
    }

    @Override
    public Verdict<DaysSolution> complete(Point point, double cutoff) {
        Map<Seat, Map<Dish, Integer>> containers = containers(point.values());
        List<Column> columns = new ArrayList<>();
        containers
                .keySet()
                .forEach(seat ->
                        totals.menu().dishes(seat).forEach(dish -> columns.add(totals.containersColumn(seat, dish))));
        Attempt attempt = attempts.computeIfAbsent(containers, c -> quick(c, cutoff));
        if (!attempt.thorough() && reached(attempt, point.bound())) {
            return Verdict.closed(attempt.found);
        }
        List<Part> parts = new ArrayList<>(Parts.allBut(columns, point));
        if (!attempt.thorough() && depth == Depth.THOROUGH) {
            int nextRound = Math.max(1, point.round());
            if (columns.stream().allMatch(point::isFixed)) {
                attempt = thorough(containers, attempt, point, cutoff);
                attempts.put(containers, attempt);
                if (attempt.state == Attempt.State.TOO_MANY) {
                    effort.leaveOut(point.bound());
                    return Verdict.closed(attempt.found);
                }
                if (reached(attempt, point.bound())) {
                    return Verdict.closed(attempt.found);
                }
                nextRound = point.round() + 1;
            }
            if (!attempt.thorough()) {
                // These counts must wait until all others have had a look.
                parts.add(Parts.only(columns, point.values()).putOff(nextRound, point.bound()));
            }
        }
        return new Verdict<>(attempt.found, parts);
    }

    @Override
    public Optional<Found<DaysSolution>> tryOut(Point point, double cutoff) {
        return attempts.computeIfAbsent(containers(point.values()), c -> quick(c, cutoff)).found;
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

    private static boolean reached(Attempt attempt, double bound) {
        return attempt.found.isPresent() && attempt.found.get().cost() <= bound + HALF_A_CENT;
    }

    /** The cheapest plan over the most even layout. */
    private Attempt quick(Map<Seat, Map<Dish, Integer>> containers, double cutoff) {
        Map<Seat, List<LikeDays>> groups = new LinkedHashMap<>();
        for (Seat seat : totals.request().seats()) {
            var layouts = layouts(seat, containers, FIRST_LAYOUTS);
            if (layouts.isEmpty()) {
                return new Attempt(Optional.empty(), 0, Attempt.State.THOROUGH);
            }
            groups.put(seat, layouts.get(0));
        }
        Layout layout = new Layout(containers, groups);
        Effort little = effort.limited(QUICK_STEPS);
        var look = new LayoutSearch(layout, new Maker(depth == Depth.EVERY_DAY_ALIKE), little).glimpse(cutoff);
        return new Attempt(look.found(), 0, Attempt.State.UNFINISHED);
    }

    /**
     * The cheapest plan over every layout, below the cutoff; goes on from the layout where the last attempt ended. Stops at a
     * plan that costs no more than the bound, and when the steps of this round are spent.
     */
    private Attempt thorough(Map<Seat, Map<Dish, Integer>> containers, Attempt attempt, Point point, double cutoff) {
        Effort ofThisRound = effort.limited(Effort.inRound(point.round(), FIRST_STEPS));
        Optional<Found<DaysSolution>> best = attempt.found;
        double below = Math.min(cutoff, best.map(Found::cost).orElse(cutoff));
        List<Map<Seat, List<LikeDays>>> combinations = List.of(Map.of());
        for (Seat seat : totals.request().seats()) {
            combinations = extended(combinations, seat, layouts(seat, containers, MOST_LAYOUTS));
        }
        for (int c = attempt.looked; c < combinations.size(); c++) {
            var layout = new Layout(containers, combinations.get(c));
            var look = new LayoutSearch(layout, new Maker(false), ofThisRound).cheapest(below);
            if (look.found().isPresent()) {
                best = look.found();
                below = best.get().cost();
            }
            if (below <= point.bound() + HALF_A_CENT || !look.done()) {
                return new Attempt(best, c, Attempt.State.UNFINISHED);
            }
        }
        boolean tooMany = combinations.size() > MOST_LAYOUTS;
        return new Attempt(best, combinations.size(), tooMany ? Attempt.State.TOO_MANY : Attempt.State.THOROUGH);
    }

    /** Every combination with every layout of one more eater; one too many where there would be more. */
    private static List<Map<Seat, List<LikeDays>>> extended(
            List<Map<Seat, List<LikeDays>>> combinations, Seat seat, List<List<LikeDays>> layouts) {
        List<Map<Seat, List<LikeDays>>> longer = new ArrayList<>();
        for (var combination : combinations) {
            for (var days : layouts) {
                if (longer.size() > MOST_LAYOUTS) {
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
        return DayLayouts.atMost(
                        limit,
                        Lookup.get(containers, seat),
                        totals.request().days(),
                        seat.eater().wishes().containersADay())
                .stream()
                .map(Layout::grouped)
                .toList();
    }

    /** How the models of layouts are made: all rules, and what is aimed at. */
    private final class Maker implements LayoutSearch.DraftMaker {
        private final boolean sameSnacks;

        Maker(boolean sameSnacks) {
            this.sameSnacks = sameSnacks;
        }

        @Override
        public DaysDraft make(Layout layout) {
            var request = totals.request();
            return aim.complete(
                    sameSnacks
                            ? DaysDraft.sameSnacks(request, totals.menu(), layout)
                            : new DaysDraft(request, totals.menu(), layout));
        }

        @Override
        public Optional<DaysDraft> withPacks(Layout layout, List<Integer> packs) {
            return Optional.of(DaysDraft.withPacks(totals.request(), totals.menu(), layout, packs));
        }
    }
}
