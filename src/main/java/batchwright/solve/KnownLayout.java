package batchwright.solve;

import batchwright.food.Dish;
import batchwright.person.KindsADay;
import batchwright.person.Wishes;
import batchwright.plan.EaterDays;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Serving;
import batchwright.plan.Session;
import batchwright.solve.Layout.LikeDays;
import batchwright.solve.rule.Menu;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which containers a session has on which day, for another request: days are dropped or come again, containers of dishes that are not
 * offered or do not keep give way to others, one of the most frequent dish of a day goes where there are too many.
 */
final class KnownLayout {
    private final PlanRequest request;
    private final Menu menu;
    private final Session session;

    KnownLayout(PlanRequest request, Menu menu, Session session) {
        this.request = request;
        this.menu = menu;
        this.session = session;
    }

    /** Unchanged; empty where it does not fit. */
    Optional<Layout> asItIs() {
        return session.days() == request.days()
                        && session.eaters().size() == request.seats().size()
                        && request.seats().stream()
                                .allMatch(seat -> fitted(seat).equals(known(seat)))
                ? fitted()
                : Optional.empty();
    }

    /** Changed where it has to be; empty where that is not enough. */
    Optional<Layout> fitted() {
        Map<Seat, Map<Dish, Integer>> containers = new LinkedHashMap<>();
        Map<Seat, List<LikeDays>> groups = new LinkedHashMap<>();
        for (Seat seat : request.seats()) {
            Optional<List<Map<Dish, Integer>>> days = fitted(seat);
            if (days.isEmpty()) {
                return Optional.empty();
            }
            containers.put(seat, Layout.inAll(days.get()));
            groups.put(seat, Layout.grouped(days.get()));
        }
        return Optional.of(new Layout(containers, groups));
    }

    private Optional<List<Map<Dish, Integer>>> known(Seat seat) {
        return session.eaters().stream()
                .filter(mine -> mine.seat().eater().equals(seat.eater()))
                .findFirst()
                .map(EaterDays::days)
                .map(days -> days.stream().map(day -> servings(day.servings())).toList());
    }

    private Map<Dish, Integer> servings(List<Serving> servings) {
        Map<Dish, Integer> today = new LinkedHashMap<>();
        servings.forEach(serving -> today.merge(serving.dish(), serving.count(), Integer::sum));
        return today;
    }

    private Optional<List<Map<Dish, Integer>>> fitted(Seat seat) {
        return known(seat).flatMap(before -> {
            List<Map<Dish, Integer>> days = new ArrayList<>();
            for (int day = 1; day <= request.days(); day++) {
                Map<Dish, Integer> today = fitted(seat, day, before.get((day - 1) % before.size()));
                if (!isRight(seat.eater().wishes(), today)) {
                    return Optional.empty();
                }
                days.add(today);
            }
            return Optional.of(days);
        });
    }

    /** Dishes are those of this request. */
    private Map<Dish, Integer> fitted(Seat seat, int day, Map<Dish, Integer> before) {
        Wishes wishes = seat.eater().wishes();
        List<Dish> offered = offered(seat, day);
        Map<Dish, Integer> today = new LinkedHashMap<>();
        offered.stream()
                .filter(before::containsKey)
                .forEach(dish -> today.put(dish, Math.min(before.getOrDefault(dish, 0), wishes.mostADay(dish))));
        for (int count = count(today); count > wishes.containersADay(); count--) {
            today.entrySet().stream()
                    .max(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .ifPresent(dish -> today.computeIfPresent(dish, (d, n) -> n == 1 ? null : n - 1));
        }
        for (int count = count(today); count < wishes.containersADay(); count++) {
            offered.stream()
                    .filter(dish -> today.getOrDefault(dish, 0) < wishes.mostADay(dish))
                    .min(Comparator.comparing(dish -> today.getOrDefault(dish, 0)))
                    .ifPresent(dish -> today.merge(dish, 1, Integer::sum));
        }
        return today;
    }

    /** Dishes of the session that the eater may have on a day. */
    private List<Dish> offered(Seat seat, int day) {
        return menu.dishes(seat).stream()
                .filter(dish -> dish.keepsUntil(day))
                .filter(dish -> session.batches().stream()
                        .anyMatch(batch -> batch.dish().equals(dish)))
                .toList();
    }

    private static boolean isRight(Wishes wishes, Map<Dish, Integer> today) {
        List<Dish> dishes = List.copyOf(today.keySet());
        return count(today) == wishes.containersADay()
                && KindsADay.allHold(
                        wishes.kindsADay(),
                        dishes,
                        dishes.stream()
                                .mapToInt(dish -> today.getOrDefault(dish, 0))
                                .toArray());
    }

    private static int count(Map<Dish, Integer> today) {
        return today.values().stream().mapToInt(Integer::intValue).sum();
    }
}
