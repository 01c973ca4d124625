package batchwright.solve;

import batchwright.food.Dish;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.mip.Completion.Found;
import batchwright.solve.rule.Menu;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Makes a plan cheaper by large neighbourhoods: the containers and snacks of all eaters but one stay, and hers are decided anew with
 * the packs, exactly; then the next one's; with the same containers on each day, or with one of them of another dish. Ends
 * when nothing of this helps. Proves nothing; its steps are counted, so that it does not depend on the clock.
 */
final class Improvement {
    /** Nodes spent on each neighbourhood of a plan that may be good. */
    static final long QUICK = 200;

    /** Nodes spent on each neighbourhood of the best plan there is. */
    static final long THOROUGH = 1_000;

    /** All eaters at once, which takes long, are worth so many times the nodes of one; only for the best plan. */
    private static final int ALL_AT_ONCE = 4;

    private final PlanRequest request;
    private final Aim aim;
    private final Effort effort;
    private final long steps;
    private Found<DaysSolution> best;

    private Improvement(PlanRequest request, Aim aim, Effort effort, Found<DaysSolution> start, long steps) {
        this.request = request;
        this.aim = aim;
        this.effort = effort;
        this.best = start;
        this.steps = steps;
    }

    /**
     * The plan, or a cheaper one.
     *
     * @param steps nodes spent on each neighbourhood
     */
    static Found<DaysSolution> of(PlanRequest request, Aim aim, Effort effort, Found<DaysSolution> start, long steps) {
        return new Improvement(request, aim, effort, start, steps).improved();
    }

    private Found<DaysSolution> improved() {
        boolean better = true;
        while (better && !effort.requested()) {
            better = eaterByEater() || withOtherContainers();
        }
        return best;
    }

    private boolean eaterByEater() {
        boolean better = false;
        for (Seat seat : request.seats()) {
            better |= found(layout(), Set.of(seat), steps);
        }
        boolean allAtOnce = steps > QUICK && found(layout(), Set.copyOf(request.seats()), ALL_AT_ONCE * steps);
        return better || allAtOnce;
    }

    /** One container of one eater becomes one of another dish, on the first day of some like days. */
    private boolean withOtherContainers() {
        for (Seat seat : request.seats()) {
            for (Layout other : others(seat)) {
                if (found(other, Set.of(seat), steps)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Layout layout() {
        return best.solution().draft().layout();
    }

    private List<Layout> others(Seat seat) {
        List<Layout> others = new ArrayList<>();
        Layout now = layout();
        Set<Map<Dish, Integer>> seen = new LinkedHashSet<>();
        List<Map<Dish, Integer>> days = now.days(seat);
        for (int day = 0; day < days.size(); day++) {
            if (seen.add(days.get(day))) {
                for (Dish less : days.get(day).keySet()) {
                    for (Dish more : dishes()) {
                        exchanged(days, day, less, more, seat)
                                .ifPresent(changed -> others.add(with(now, seat, changed)));
                    }
                }
            }
        }
        return others;
    }

    private List<Dish> dishes() {
        return best.solution().draft().menu().dishes();
    }

    private Optional<List<Map<Dish, Integer>>> exchanged(
            List<Map<Dish, Integer>> days, int day, Dish less, Dish more, Seat seat) {
        var wishes = seat.eater().wishes();
        int already =
                request
                        .left()
                        .byOrigin(days.get(day).keySet())
                        .getOrDefault(request.left().origin(more), List.of())
                        .stream()
                        .filter(same -> !same.equals(less))
                        .mapToInt(same -> days.get(day).getOrDefault(same, 0))
                        .sum();
        if (less.equals(more)
                || !best.solution().draft().menu().dishes(seat).contains(more)
                || already >= wishes.mostADay(more)
                || less.kind() != more.kind()
                || !more.keepsUntil(day + 1)) {
            return Optional.empty();
        }
        Map<Dish, Integer> changed = new LinkedHashMap<>(days.get(day));
        changed.computeIfPresent(less, (dish, count) -> count == 1 ? null : count - 1);
        changed.merge(more, 1, Integer::sum);
        List<Map<Dish, Integer>> all = new ArrayList<>(days);
        all.set(day, changed);
        return Optional.of(all);
    }

    private static Layout with(Layout now, Seat seat, List<Map<Dish, Integer>> days) {
        Map<Seat, Map<Dish, Integer>> containers = new LinkedHashMap<>(now.containers());
        containers.put(seat, Layout.inAll(days));
        Map<Seat, List<LikeDays>> groups = new LinkedHashMap<>(now.groups());
        groups.put(seat, Layout.grouped(days));
        return new Layout(containers, groups);
    }

    /** Whether a cheaper plan was found in which all stays but what these eaters get, in this layout. */
    private boolean found(Layout layout, Set<Seat> free, long most) {
        Effort little = effort.limited(most);
        Menu menu = best.solution().draft().menu();
        var models = new LayoutModels(request, menu, aim, Depth.THOROUGH, little);
        var maker = new OthersStay(models, best.solution(), free);
        var cheaper = new LayoutSearch(layout.singly(), maker, little).heuristic(best.cost());
        cheaper.ifPresent(found -> {
            best = found;
            effort.found(found);
        });
        return cheaper.isPresent();
    }
}
