package batchwright.app.book;

import batchwright.book.BoxesLeft;
import batchwright.book.Event.Place;
import batchwright.book.KeptPlan.EatersDay;
import batchwright.book.KeptPlan.PlannedBox;
import batchwright.book.KeptPlans;
import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.person.Eater;
import batchwright.plan.left.LeftDish;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which of the containers that are there can be eaten on some days: as many as there is room for by the rules of meals, those that must
 * go first in front. Where containers stay on the days they were planned for, these come before all others.
 */
final class ShareLeft {
    private final Kitchen kitchen;
    private final KeptPlans plans;
    private final LocalDate first;
    private final int days;
    private final boolean keeps;
    private final List<LeftDish> dishes = new ArrayList<>();
    private final List<BoxesLeft.Lot> over = new ArrayList<>();
    private final Map<String, Integer> names = new HashMap<>();

    ShareLeft(Kitchen kitchen, KeptPlans plans, LocalDate first, int days, boolean keeps) {
        this.kitchen = kitchen;
        this.plans = plans;
        this.first = first;
        this.days = days;
        this.keeps = keeps;
    }

    List<LeftDish> dishes() {
        return dishes;
    }

    /** What finds no place. */
    List<BoxesLeft.Lot> over() {
        return over;
    }

    void share(Eater eater, List<BoxesLeft.Lot> there, List<EatersDay> planned) {
        var mine = new OfEater(eater, there);
        if (keeps) {
            planned.forEach(mine::stay);
        }
        mine.fill();
        mine.close();
    }

    private final class OfEater {
        private final Eater eater;
        private final Map<BoxesLeft.Lot, Integer> left = new LinkedHashMap<>();
        private final Map<BoxesLeft.Lot, Map<Integer, Integer>> staying = new LinkedHashMap<>();
        private final Map<BoxesLeft.Lot, Integer> free = new LinkedHashMap<>();
        private final Map<Integer, List<Dish>> onDay = new HashMap<>();

        OfEater(Eater eater, List<BoxesLeft.Lot> there) {
            this.eater = eater;
            there.forEach(lot -> left.merge(lot.of(1), lot.count(), Integer::sum));
        }

        /** What was planned for a day and is there. */
        void stay(EatersDay planned) {
            for (PlannedBox box : planned.boxes()) {
                for (BoxesLeft.Lot lot : List.copyOf(left.keySet())) {
                    int already = staying.values().stream()
                            .mapToInt(on -> on.getOrDefault(planned.day(), 0))
                            .sum();
                    int wanted = lot.boxes().dish().equals(box.dish()) ? missing(planned, box) : 0;
                    for (int i = 0; i < wanted && already + i < eater.wishes().containersADay(); i++) {
                        if (take(lot, planned.day())) {
                            staying.computeIfAbsent(lot, l -> new HashMap<>()).merge(planned.day(), 1, Integer::sum);
                        }
                    }
                }
            }
        }

        /** How many of the planned ones have none yet. */
        private int missing(EatersDay planned, PlannedBox box) {
            int there = staying.entrySet().stream()
                    .filter(entry -> entry.getKey().boxes().dish().equals(box.dish()))
                    .mapToInt(entry -> entry.getValue().getOrDefault(planned.day(), 0))
                    .sum();
            int all = planned.boxes().stream()
                    .filter(other -> other.dish().equals(box.dish()))
                    .mapToInt(PlannedBox::count)
                    .sum();
            return all - there;
        }

        void fill() {
            for (int day = 1; day <= days; day++) {
                for (BoxesLeft.Lot lot : List.copyOf(left.keySet())) {
                    while (take(lot, day)) {
                        free.merge(lot, 1, Integer::sum);
                    }
                }
            }
        }

        private boolean take(BoxesLeft.Lot lot, int day) {
            int there = left.getOrDefault(lot, 0);
            List<Dish> dishes = onDay.computeIfAbsent(day, d -> new ArrayList<>());
            Optional<ContainerHolds> holds = ContainerHolds.of(lot, kitchen, plans);
            if (there == 0
                    || holds.isEmpty()
                    || lot.until().isBefore(first.plusDays(day - 1L))
                    || dishes.size() >= eater.wishes().containersADay()
                    || !MayEat.to(eater, lot, kitchen)) {
                return false;
            }
            Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
            if (dish == null || !EatFirst.fits(eater.wishes(), dishes, dish)) {
                return false;
            }
            dishes.add(dish);
            left.put(lot, there - 1);
            return true;
        }

        void close() {
            staying.forEach((lot, byDay) ->
                    add(lot, byDay.values().stream().mapToInt(Integer::intValue).sum(), byDay));
            free.forEach((lot, count) -> add(lot, count, Map.of()));
            left.forEach((lot, count) -> {
                if (count > 0) {
                    over.add(lot.of(count));
                }
            });
        }

        private void add(BoxesLeft.Lot lot, int count, Map<Integer, Integer> byDay) {
            ContainerHolds holds = ContainerHolds.of(lot, kitchen, plans).orElseThrow();
            Dish origin = kitchen.dish(lot.boxes().dish()).orElseThrow();
            int number = names.merge(lot.boxes().dish(), 1, Integer::sum);
            String id = lot.boxes().dish() + (number == 1 ? " (left)" : " (left " + number + ")");
            int lastDay = lot.place() == Place.FREEZER ? 0 : (int) (lot.until().toEpochDay() - first.toEpochDay()) + 1;
            dishes.add(new LeftDish(
                    LeftDish.dish(id, origin, holds.grams(), holds.holds(), lastDay),
                    lot.boxes().dish(),
                    eater.id(),
                    count,
                    byDay));
        }
    }
}
