package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.mip.StepBudget;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The search over every layout of one vector of container counts. It can be left and resumed, and is the same one wherever
 * the search over totals meets these counts, so that no layout is looked at twice.
 */
final class CountsSearch {
    private static final int MOST_LAYOUTS = 20_000;
    /** Enough to find an even one. */
    private static final int FIRST_LAYOUTS = 50;

    /** Spent on the most even layout before the search goes on. */
    private static final long QUICK_STEPS = 300;

    /** Spent on all layouts in the first slice; twice as much in each further one. */
    private static final long FIRST_STEPS = 500;

    /** Putting a layout together takes as long as looking at this many numbers of a tableau. */
    private static final long WORK_OF_A_LAYOUT = 1_000;

    private static final double HALF_A_CENT = 0.5;

    private final PlanRequest request;
    private final Map<Seat, Map<Dish, Integer>> containers;
    private final LayoutSearch.DraftMaker maker;
    private final Effort effort;
    private final StepBudget budget = new StepBudget(0);
    private final TimeSlices slices = new TimeSlices(budget, FIRST_STEPS);

    private Optional<Found<DaysSolution>> found = Optional.empty();
    private final List<LayoutSearch> open = new ArrayList<>();
    private boolean begun;
    private boolean tooMany;
    private State state = State.UNFINISHED;

    /** How much was looked at. */
    enum State {
        UNFINISHED,
        /** Every layout was: nothing but what was found is cheaper than the cutoff was. */
        THOROUGH,
        /** There are too many layouts; all that ever will be looked at were. */
        TOO_MANY
    }

    CountsSearch(
            PlanRequest request,
            Map<Seat, Map<Dish, Integer>> containers,
            LayoutSearch.DraftMaker maker,
            Effort effort) {
        this.request = request;
        this.containers = containers;
        this.maker = maker;
        this.effort = effort.within(budget);
    }

    /** The cheapest plan found for these counts. */
    Optional<Found<DaysSolution>> found() {
        return found;
    }

    State state() {
        return state;
    }

    /** Not worth going on before this time of the search over totals: others come first. */
    long resumeAt() {
        return slices.resumeAt();
    }

    boolean reached(double bound) {
        return found.isPresent() && found.get().cost() <= bound + HALF_A_CENT;
    }

    /** A heuristic: looks for a plan over the most even layout alone; answers with the relaxations it took. */
    long heuristic(double cutoff) {
        Map<Seat, List<LikeDays>> groups = new LinkedHashMap<>();
        for (Seat seat : request.seats()) {
            var mine = layouts(seat, FIRST_LAYOUTS);
            if (mine.isEmpty()) {
                state = State.THOROUGH;
                return 0;
            }
            groups.put(seat, mine.get(0));
        }
        long before = effort.nodes();
        budget.refill(QUICK_STEPS);
        found = new LayoutSearch(new Layout(containers, groups), maker, effort).heuristic(cutoff);
        found.ifPresent(effort::found);
        return effort.nodes() - before;
    }

    /**
     * Goes on over every layout, below the cutoff, always in the one with the least bound. Stops at a plan that costs no more than
     * the bound, and when the steps of this slice are spent. Then others may spend as much before the next.
     *
     * @param relaxations solved by the search over totals
     * @return relaxations solved
     */
    long runSlice(double cutoff, double bound, long relaxations) {
        long before = effort.nodes();
        slices.begin();
        lookAtLayouts(cutoff, bound);
        long used = effort.nodes() - before;
        slices.end(relaxations, used);
        return used;
    }

    /** No plan for these counts costs less, as far as is known. */
    double bound() {
        return open.stream().mapToDouble(LayoutSearch::bound).min().orElse(Double.NEGATIVE_INFINITY);
    }

    private void lookAtLayouts(double cutoff, double bound) {
        if (!begun) {
            begin();
        }
        while (!open.isEmpty()) {
            double below = Math.min(cutoff, found.map(Found::cost).orElse(cutoff));
            if (below <= bound + HALF_A_CENT || effort.requested()) {
                return;
            }
            effort.spendNode();
            LayoutSearch search = Collections.min(open, Comparator.comparingDouble(LayoutSearch::bound));
            var look = search.runSlice(below);
            if (look.found().isPresent()) {
                found = look.found();
                found.ifPresent(effort::found);
            }
            if (look.done()) {
                open.remove(search);
            }
        }
        state = tooMany ? State.TOO_MANY : State.THOROUGH;
    }

    private void begin() {
        List<Map<Seat, List<LikeDays>>> all = allLayouts();
        all.forEach(groups -> open.add(new LayoutSearch(new Layout(containers, groups), maker, effort)));
        tooMany = all.size() > MOST_LAYOUTS;
        begun = true;
    }

    private List<Map<Seat, List<LikeDays>>> allLayouts() {
        List<Map<Seat, List<LikeDays>>> combinations = List.of(Map.of());
        for (Seat seat : request.seats()) {
            combinations = extended(combinations, seat, layouts(seat, MOST_LAYOUTS));
        }
        return combinations;
    }

    /** Every combination with every layout of one more eater; one too many where there would be more. */
    private List<Map<Seat, List<LikeDays>>> extended(
            List<Map<Seat, List<LikeDays>>> combinations, Seat seat, List<List<LikeDays>> layouts) {
        List<Map<Seat, List<LikeDays>>> longer = new ArrayList<>();
        for (var combination : combinations) {
            for (var days : layouts) {
                if (longer.size() > MOST_LAYOUTS) {
                    return longer;
                }
                effort.spend(WORK_OF_A_LAYOUT);
                Map<Seat, List<LikeDays>> next = new LinkedHashMap<>(combination);
                next.put(seat, days);
                longer.add(next);
            }
        }
        return longer;
    }

    private List<List<LikeDays>> layouts(Seat seat, int limit) {
        return DayLayouts.atMost(
                        limit,
                        Lookup.get(containers, seat),
                        request,
                        seat.eater().wishes(),
                        effort)
                .stream()
                .map(Layout::grouped)
                .toList();
    }
}
