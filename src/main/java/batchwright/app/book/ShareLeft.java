package batchwright.app.book;

import batchwright.answer.RestOfPlan.Offer;
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
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which of the containers that are there can be eaten on some days: as many as there is room for by the rules of meals, those that must
 * go first in front. Where containers stay on the days they were planned for, these come before all others.
 */
final class ShareLeft {
    private final Kitchen kitchen;
    private final KeptPlans plans;
    private final MayEat mayEat;
    private final LocalDate first;
    private final int days;
    private final boolean keeps;
    private final List<LeftDish> dishes = new ArrayList<>();
    private final List<BoxesLeft.Lot> over = new ArrayList<>();
    private final List<Offer> offers = new ArrayList<>();
    private final Map<Eater, Integer> eaten = new LinkedHashMap<>();
    private final Map<String, Integer> names = new HashMap<>();

    ShareLeft(MayEat mayEat, LocalDate first, int days, boolean keeps) {
        this.mayEat = mayEat;
        this.kitchen = mayEat.kitchen();
        this.plans = mayEat.plans();
        this.first = first;
        this.days = days;
        this.keeps = keeps;
    }

    List<LeftDish> dishes() {
        return dishes;
    }

    /** What finds no place and may be for nobody else. */
    List<BoxesLeft.Lot> over() {
        return over;
    }

    /** What may be for somebody else at the table. */
    List<Offer> offers() {
        return offers;
    }

    /** What finds no place with its own eater is offered to others who have room and may have it; everybody was shared out to before. */
    void offer() {
        for (BoxesLeft.Lot lot : List.copyOf(over)) {
            Set<String> others = eaten.entrySet().stream()
                    .filter(other -> hasRoom(other.getKey(), other.getValue(), lot))
                    .map(other -> other.getKey().id())
                    .collect(Collectors.toSet());
            if (!others.isEmpty()) {
                over.remove(lot);
                LeftDish left = left(lot, others, lot.count(), Map.of());
                dishes.add(left);
                offers.add(new Offer(left, lot));
            }
        }
    }

    private boolean hasRoom(Eater eater, int has, BoxesLeft.Lot lot) {
        Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
        return dish != null
                && !eater.id().equals(lot.boxes().eater())
                && has < days * eater.wishes().containersADay()
                && eater.wishes().mostADay(dish) > 0
                && mayEat.anothers(eater, lot);
    }

    /** @param others for whom, when not for its own eater */
    private LeftDish left(BoxesLeft.Lot lot, Set<String> others, int count, Map<Integer, Integer> byDay) {
        int number = names.merge(lot.boxes().dish(), 1, Integer::sum);
        String id = lot.boxes().dish() + (number == 1 ? " (left)" : " (left " + number + ")");
        return new LeftDish(
                dish(id, lot, ContainerHolds.of(lot, kitchen, plans).orElseThrow()),
                lot.boxes().dish(),
                lot.boxes().eater(),
                others,
                count,
                byDay);
    }

    private Dish dish(String id, BoxesLeft.Lot lot, ContainerHolds holds) {
        int lastDay = lot.place() == Place.FREEZER ? 0 : (int) (lot.until().toEpochDay() - first.toEpochDay()) + 1;
        return LeftDish.dish(id, holds.cooked(), holds.madeOf(), holds.grams(), holds.holds(), lastDay);
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
                    || !MayEat.to(eater, lot, kitchen)
                    || !eater.wishes().allows(dish(lot.boxes().dish(), lot, holds.get()))) {
                return false;
            }
            Dish dish = kitchen.dish(lot.boxes().dish()).orElse(null);
            if (dish == null
                    || !EatFirst.fits(eater.wishes(), dishes, dish)
                    || inAll(dish) >= eater.wishes().mostInAll(dish, days)) {
                return false;
            }
            dishes.add(dish);
            left.put(lot, there - 1);
            return true;
        }

        private long inAll(Dish dish) {
            return onDay.values().stream()
                    .flatMap(List::stream)
                    .filter(dish::equals)
                    .count();
        }

        void close() {
            eaten.put(eater, onDay.values().stream().mapToInt(List::size).sum());
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
            dishes.add(left(lot, Set.of(), count, byDay));
        }
    }
}
