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

    private static final double HALF_A_CENT = 0.5;

    private final TotalsDraft totals;
    private final Aim aim;
    private final Effort effort;
    private final Map<Map<Seat, Map<Dish, Integer>>, Attempt> attempts = new HashMap<>();

    /**
     * What is known of one vector of container counts.
     *
     * @param found the best plan found for it
     * @param thorough whether every layout was looked at: nothing but {@code found} is cheaper than the cutoff was
     */
    private record Attempt(Optional<Found<DaysSolution>> found, boolean thorough) {}

    private final Depth depth;

    DayByDay(TotalsDraft totals, Aim aim, Effort effort, Depth depth) {
        this.depth = depth;
        this.totals = totals;
        this.aim = aim;
        this.effort = effort;
    }

    @Override
    public Verdict<DaysSolution> complete(
            double[] values, double[] lower, double[] upper, double bound, double cutoff) {
        Map<Seat, Map<Dish, Integer>> containers = containers(values);
        List<Column> columns = new ArrayList<>();
        containers
                .keySet()
                .forEach(seat ->
                        totals.menu().dishes(seat).forEach(dish -> columns.add(totals.containersColumn(seat, dish))));
        Attempt attempt = attempts.computeIfAbsent(containers, c -> quick(c, cutoff));
        if (!attempt.thorough && reached(attempt, bound)) {
            return Verdict.closed(attempt.found);
        }
        List<Part> parts = new ArrayList<>(Parts.allBut(columns, values, lower, upper));
        if (!attempt.thorough && depth == Depth.THOROUGH) {
            boolean fixed = columns.stream().allMatch(c -> lower[c.index()] == upper[c.index()]);
            if (fixed) {
                attempt = thorough(containers, attempt, bound, cutoff);
                attempts.put(containers, attempt);
                if (!attempt.thorough) {
                    // Good enough for this node, or time is up; another node may need another look.
                    return Verdict.closed(attempt.found);
                }
            } else {
                // These counts must wait until all others have had a quick look.
                parts.add(Parts.only(columns, values).putOff());
            }
        }
        return new Verdict<>(attempt.found, parts);
    }

    @Override
    public Optional<Found<DaysSolution>> tryOut(double[] values, double[] lower, double[] upper, double cutoff) {
        return attempts.computeIfAbsent(containers(values), c -> quick(c, cutoff)).found;
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
                return new Attempt(Optional.empty(), true);
            }
            groups.put(seat, layouts.get(0));
        }
        Layout layout = new Layout(containers, groups);
        Effort little = effort.limited(QUICK_STEPS);
        var look = new LayoutSearch(layout, new Maker(depth == Depth.EVERY_DAY_ALIKE), little).glimpse(cutoff);
        return new Attempt(look.found(), false);
    }

    /** The cheapest plan over every layout, below the cutoff; stops at a plan that costs no more than the bound. */
    private Attempt thorough(Map<Seat, Map<Dish, Integer>> containers, Attempt attempt, double bound, double cutoff) {
        Optional<Found<DaysSolution>> best = attempt.found;
        double below = Math.min(cutoff, best.map(Found::cost).orElse(cutoff));
        List<Map<Seat, List<LikeDays>>> combinations = List.of(Map.of());
        for (Seat seat : totals.request().seats()) {
            combinations = extended(combinations, seat, layouts(seat, containers, MOST_LAYOUTS));
        }
        boolean tooMany = combinations.size() > MOST_LAYOUTS;
        for (Map<Seat, List<LikeDays>> groups : combinations) {
            var look = new LayoutSearch(new Layout(containers, groups), new Maker(false), effort).cheapest(below);
            if (look.found().isPresent()) {
                best = look.found();
                below = best.get().cost();
            }
            if (below <= bound + HALF_A_CENT) {
                return new Attempt(best, false);
            }
            if (!look.done() || tooMany) {
                effort.leaveOut(bound);
                return new Attempt(best, false);
            }
        }
        return new Attempt(best, true);
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
