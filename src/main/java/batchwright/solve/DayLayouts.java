package batchwright.solve;

import batchwright.food.Dish;
import batchwright.person.KindsADay;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.left.LeftContainers;
import batchwright.solve.mip.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The ways to lay out one eater's containers over the days: exactly so many a day, a dish no more often than allowed, dishes for
 * the meals they are for, nothing later than it keeps. Days between which nothing stops keeping are alike, so each set of such days is listed once only. The most
 * even layouts come first: they are likeliest to keep the day rules.
 */
final class DayLayouts {
    /** Checking whether a dish fits a day takes as long as looking at this many numbers of a tableau. */
    private static final long WORK_OF_A_LOOK = 10;

    private final List<Dish> dishes;
    private final int[] total;
    private final int days;
    private final LeftContainers before;
    private final Wishes wishes;
    private final List<KindsADay> meals;
    /** Which of the dishes are the same, where there are several. */
    private final List<int[]> ofOneDish;

    private final List<int[]> patterns = new ArrayList<>();
    private final List<List<int[]>> found = new ArrayList<>();

    private final int limit;
    private final Stop stop;

    private DayLayouts(Map<Dish, Integer> containers, PlanRequest request, Wishes wishes, int limit, Stop stop) {
        this.stop = stop;
        this.limit = limit;
        this.dishes = List.copyOf(containers.keySet());
        this.total = containers.values().stream().mapToInt(Integer::intValue).toArray();
        this.days = request.days();
        this.before = request.left();
        this.wishes = wishes;
        this.meals = wishes.kindsADay();
        this.ofOneDish = before.byOrigin(dishes).values().stream()
                .filter(same -> same.size() > 1)
                .map(same -> same.stream().mapToInt(dishes::indexOf).toArray())
                .toList();
    }

    /** Layouts, the most even first; every one there is, unless there are more than the limit. */
    static List<List<Map<Dish, Integer>>> atMost(
            int limit, Map<Dish, Integer> containers, PlanRequest request, Wishes wishes, Stop stop) {
        var layouts = new DayLayouts(containers, request, wishes, limit, stop);
        layouts.collectPatterns(new int[layouts.dishes.size()], 0, wishes.containersADay());
        layouts.patterns.sort(Comparator.comparingLong(DayLayouts::squares));
        layouts.layDay(1, layouts.total.clone(), new ArrayList<>(), 0);
        layouts.found.sort(Comparator.comparingLong(DayLayouts::unevenness));
        return layouts.found.stream().map(layouts::named).toList();
    }

    private void collectPatterns(int[] pattern, int dish, int left) {
        if (dish == pattern.length) {
            if (left == 0 && noneTooOften(pattern) && KindsADay.allHold(meals, dishes, pattern)) {
                patterns.add(pattern.clone());
            }
            return;
        }
        for (int count = Math.min(left, wishes.mostADay(dishes.get(dish))); count >= 0; count--) {
            pattern[dish] = count;
            collectPatterns(pattern, dish + 1, left - count);
        }
        pattern[dish] = 0;
    }

    /** Containers from before and new ones of the same dish are counted together. */
    private boolean noneTooOften(int[] pattern) {
        for (int[] same : ofOneDish) {
            int count = 0;
            for (int dish : same) {
                count += pattern[dish];
            }
            if (count > wishes.mostADay(dishes.get(same[0]))) {
                return false;
            }
        }
        return true;
    }

    private void layDay(int day, int[] left, List<int[]> chosen, int from) {
        if (found.size() > limit) {
            return;
        }
        if (day > days) {
            found.add(new ArrayList<>(chosen));
            return;
        }
        // Days that are alike take their patterns in order; where something stops keeping, the order starts again.
        int first = day > 1 && sameAsDayBefore(day) ? from : 0;
        for (int p = first; p < patterns.size(); p++) {
            int[] pattern = patterns.get(p);
            stop.spend(WORK_OF_A_LOOK * pattern.length);
            if (fits(pattern, left, day)) {
                take(pattern, left, 1);
                if (restFits(left, day + 1)) {
                    chosen.add(pattern);
                    layDay(day + 1, left, chosen, p);
                    chosen.remove(chosen.size() - 1);
                }
                take(pattern, left, -1);
            }
        }
    }

    private boolean sameAsDayBefore(int day) {
        Predicate<Dish> stops = dish -> dish.keepsUntil(day - 1) && !dish.keepsUntil(day);
        Predicate<Dish> stays = dish -> !before.on(dish, day - 1).equals(before.on(dish, day));
        return dishes.stream().noneMatch(stops.or(stays));
    }

    private boolean fits(int[] pattern, int[] left, int day) {
        for (int d = 0; d < pattern.length; d++) {
            int count = pattern[d];
            if (count > left[d]
                    || (count > 0 && !dishes.get(d).keepsUntil(day))
                    || before.on(dishes.get(d), day)
                            .filter(fixed -> fixed != count)
                            .isPresent()) {
                return false;
            }
        }
        return true;
    }

    /** Whether what is left of each dish can still be eaten on the days from this one on. */
    private boolean restFits(int[] left, int day) {
        for (int d = 0; d < left.length; d++) {
            Dish dish = dishes.get(d);
            int last = dish.freezes() ? days : Math.min(days, dish.fridgeDays());
            int room = Math.max(0, last - day + 1) * wishes.mostADay(dish);
            if (left[d] > room) {
                return false;
            }
        }
        return true;
    }

    private static void take(int[] pattern, int[] left, int sign) {
        for (int d = 0; d < pattern.length; d++) {
            left[d] -= sign * pattern[d];
        }
    }

    private static long unevenness(List<int[]> layout) {
        return layout.stream().mapToLong(DayLayouts::squares).sum();
    }

    private static long squares(int[] pattern) {
        return Arrays.stream(pattern).mapToLong(count -> (long) count * count).sum();
    }

    private List<Map<Dish, Integer>> named(List<int[]> layout) {
        List<Map<Dish, Integer>> named = new ArrayList<>();
        for (int[] pattern : layout) {
            Map<Dish, Integer> day = new LinkedHashMap<>();
            for (int d = 0; d < pattern.length; d++) {
                if (pattern[d] > 0) {
                    day.put(dishes.get(d), pattern[d]);
                }
            }
            named.add(day);
        }
        return named;
    }
}
