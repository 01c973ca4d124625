package batchwright.solve.session;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.SessionsRequest;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An easier question, whose every lower bound is one for the sessions too: all days from one session, each dish offered once for
 * every session under a name of its own, as many dishes as all sessions may cook, every container keeping to the last day, and
 * everything at home or bought keeping as well. Whatever the sessions cook, eat and buy answers it at the same cost.
 */
final class AllDaysAtOnce {
    private AllDaysAtOnce() {}

    static PlanRequest of(SessionsRequest request) {
        PlanRequest whole = request.whole();
        Kitchen kitchen = whole.kitchen();
        Map<String, Dish> dishes = new LinkedHashMap<>();
        for (int session : request.sessions()) {
            kitchen.dishes().values().forEach(dish -> {
                Dish own = own(dish, session);
                dishes.put(own.id(), own);
            });
        }
        List<Seat> seats =
                whole.seats().stream().map(seat -> seat(seat, request)).toList();
        return new PlanRequest(
                kitchen.withDishes(dishes).on(kitchen.cookingDay(), keeping(kitchen)),
                seats,
                whole.days(),
                Optional.empty(),
                whole.mostDishes() * request.cooks(),
                whole.patience());
    }

    private static Dish own(Dish dish, int session) {
        return new Dish(
                dish.id() + "." + session,
                dish.name(),
                dish.kind(),
                dish.fridgeDays(),
                true,
                dish.reheat(),
                dish.parts(),
                dish.staples(),
                dish.steps());
    }

    private static Seat seat(Seat seat, SessionsRequest request) {
        Wishes wishes = seat.eater().wishes();
        Set<Dish> avoid = new LinkedHashSet<>();
        request.sessions().forEach(s -> wishes.avoidDishes().forEach(dish -> avoid.add(own(dish, s))));
        var eater = seat.eater().withWishes(wishes.withAvoided(wishes.avoidFoods(), wishes.avoidAllergens(), avoid));
        return new Seat(eater, seat.target());
    }

    /** What is good on the first day, without its date. */
    private static Map<Food, List<Lot>> keeping(Kitchen kitchen) {
        Map<Food, List<Lot>> keeping = new LinkedHashMap<>();
        kitchen.pantry()
                .forEach((food, lots) -> keeping.put(
                        food,
                        lots.stream()
                                .filter(lot -> lot.keepsUntil(kitchen.cookingDay()))
                                .map(lot -> Lot.of(lot.grams()))
                                .toList()));
        return keeping;
    }
}
