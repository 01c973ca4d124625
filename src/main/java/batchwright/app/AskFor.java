package batchwright.app;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.origin.Diet;
import batchwright.person.Avoided;
import batchwright.person.Eater;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import batchwright.plan.Variety;
import batchwright.text.NearestName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the dishes and foods that are wanted, and those that are not, into a request for them. */
final class AskFor {
    private final DishesWanted wanted;
    private final Kitchen kitchen;

    AskFor(DishesWanted wanted, Kitchen kitchen) {
        this.wanted = wanted;
        this.kitchen = kitchen;
    }

    /**
     * @param request for this kitchen
     * @throws Refused when there is no such dish or food, or a dish that is asked for cannot be cooked
     */
    PlanRequest in(PlanRequest request) {
        Map<String, Dish> dishes = offered();
        Set<Food> foods = new LinkedHashSet<>();
        Set<Diet> groups = new LinkedHashSet<>();
        wanted.without().forEach(name -> leaveOut(name, dishes, foods, groups));
        List<Seat> seats = request.seats().stream()
                .map(seat -> new Seat(without(seat.eater(), foods, groups), seat.target()))
                .toList();
        Set<Dish> must = new LinkedHashSet<>();
        wanted.with().forEach(id -> must.add(cookable(id, dishes, seats)));
        if (must.size() > request.mostDishes()) {
            throw Refused.because(
                    must.size() + " dishes are asked for, and at most " + request.mostDishes() + " are cooked",
                    "Ask for fewer, or allow " + must.size() + " dishes.");
        }
        Set<Dish> lastTime = new LinkedHashSet<>();
        wanted.lastTime().forEach(id -> lastTime.add(FindDish.answer(kitchen, id)));
        if (must.stream().filter(lastTime::contains).count() > Variety.MOST_AGAIN) {
            throw Refused.because(
                    "more than one of last time's dishes is asked for",
                    "At most one of them is cooked again: ask for one, or name fewer of last time.");
        }
        return request.withKitchen(kitchen.withDishes(dishes))
                .withSeats(seats)
                .withMustCook(must)
                .withVariety(request.variety().withLastTime(lastTime));
    }

    /** Those named or else all; but what this kitchen cannot cook is left out unless it was named. */
    private Map<String, Dish> offered() {
        Map<String, Dish> dishes = new LinkedHashMap<>();
        if (wanted.only().isEmpty()) {
            dishes.putAll(kitchen.dishes());
            dishes.values().removeIf(dish -> kitchen.equipment().obstacle(dish).isPresent());
            wanted.with().stream().map(this::possibleHere).forEach(dish -> dishes.putIfAbsent(dish.id(), dish));
        }
        wanted.only().stream().map(this::possibleHere).forEach(dish -> dishes.put(dish.id(), dish));
        return dishes;
    }

    private Dish possibleHere(String id) {
        Dish dish = FindDish.answer(kitchen, id);
        kitchen.equipment().obstacle(dish).ifPresent(step -> {
            throw Refused.because(
                    dish.id() + " cannot be cooked in this kitchen: a step needs " + step.needs(),
                    "Enter what there is in foods/kitchen.yaml, or another way to do the step in the dish.");
        });
        return dish;
    }

    private void leaveOut(String name, Map<String, Dish> dishes, Set<Food> foods, Set<Diet> groups) {
        Optional<Food> food = Optional.ofNullable(kitchen.foods().get(name));
        Optional<Diet> group = food.isPresent() ? Optional.empty() : Diet.byWord(name);
        boolean dish = kitchen.dish(name).isPresent();
        dishes.remove(name);
        food.ifPresent(foods::add);
        group.ifPresent(groups::add);
        if (!dish && food.isEmpty() && group.isEmpty()) {
            List<String> names = new ArrayList<>(kitchen.dishIds());
            names.addAll(kitchen.foods().keySet());
            Diet.all().forEach(known -> names.addAll(known.words()));
            throw Refused.because(
                    "there is no dish, food or group called \"" + name + "\" to be left out",
                    NearestName.of(name, names)
                            .map(nearest -> "Nearest: " + nearest + ".")
                            .orElse("It is the short name of a dish or food, or a group."));
        }
    }

    private static Eater without(Eater eater, Set<Food> foods, Set<Diet> groups) {
        Avoided avoided = eater.wishes().avoided();
        Set<Diet> diets = new LinkedHashSet<>(avoided.diets());
        diets.addAll(groups);
        Eater changed = eater.withWishes(eater.wishes().with(avoided.and(foods).withDiets(diets)));
        changed.wishes().always().stream()
                .map(always -> always.measure().food())
                .filter(food -> !changed.wishes().allows(food))
                .findFirst()
                .ifPresent(food -> {
                    throw Refused.because(
                            food.id() + " is to be left out, but " + eater.name() + " always eats it",
                            "Take it out of always in the profile, or plan with it.");
                });
        return changed;
    }

    private boolean canGet(Food food) {
        return !kitchen.packsOf(food).isEmpty() || kitchen.pantryGrams(food).signum() > 0;
    }

    private Dish cookable(String id, Map<String, Dish> dishes, List<Seat> seats) {
        Dish dish = possibleHere(id);
        if (!dishes.containsKey(dish.id())) {
            throw Refused.because(dish.id() + " is asked for and left out", "Ask for it or leave it out, not both.");
        }
        if (seats.stream().noneMatch(seat -> seat.eater().wishes().allows(dish))) {
            throw Refused.because(
                    dish.id() + " is asked for, but nobody here may eat it",
                    "It is avoided, or holds something that is: look at avoid in the profiles.");
        }
        dish.parts().stream()
                .filter(part -> !part.optional())
                .flatMap(part -> part.mix().stream())
                .filter(ingredient -> !ingredient.isPossible(this::canGet))
                .map(ingredient -> ingredient.food())
                .findFirst()
                .ifPresent(food -> {
                    throw Refused.because(
                            dish.id() + " is asked for, but " + food.id() + " is neither sold nor at home",
                            "Add a line for it to foods/shop.csv or profiles/pantry.csv.");
                });
        return dish;
    }
}
