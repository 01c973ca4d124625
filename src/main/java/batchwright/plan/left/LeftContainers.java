package batchwright.plan.left;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Lot;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** All containers from before that a plan has: those of its eaters, which are eaten, and those that are offered to others. */
public record LeftContainers(List<LeftDish> dishes) {
    public static final LeftContainers NONE = new LeftContainers(List.of());

    public LeftContainers {
        dishes = List.copyOf(dishes);
    }

    public Optional<LeftDish> of(Dish dish) {
        return dishes.stream().filter(left -> left.dish().equals(dish)).findFirst();
    }

    public boolean has(Dish dish) {
        return of(dish).isPresent();
    }

    public boolean has(Food food) {
        return dishes.stream().anyMatch(left -> left.food().equals(food));
    }

    /** The short name of the dish as it was cooked, or is. */
    public String origin(Dish dish) {
        return of(dish).map(LeftDish::origin).orElse(dish.id());
    }

    /** Whether this eater may have a dish: what is left is for its own eater, or for those it is offered to. */
    public boolean mayHave(String eater, Dish dish) {
        return of(dish).map(left -> left.isFor(eater)).orElse(true);
    }

    /** Dishes by what was cooked: a container from before and a new one of the same dish are one dish to who eats them. */
    public Map<String, List<Dish>> byOrigin(Collection<Dish> some) {
        return some.stream().collect(Collectors.groupingBy(this::origin, LinkedHashMap::new, Collectors.toList()));
    }

    /** The same by the short name of a dish of this search. */
    public String origin(String dish) {
        return dishes.stream()
                .filter(left -> left.dish().id().equals(dish))
                .findFirst()
                .map(LeftDish::origin)
                .orElse(dish);
    }

    /** How many containers of a dish on a day; empty when that is free. */
    public Optional<Integer> on(Dish dish, int day) {
        return of(dish).flatMap(left -> left.on(day));
    }

    /** Those that are eaten whatever it costs. */
    public Set<Dish> eaten() {
        return dishes.stream()
                .filter(LeftDish::isEaten)
                .map(LeftDish::dish)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A kitchen that has them too. */
    public Kitchen in(Kitchen kitchen) {
        Map<String, Food> foods = new LinkedHashMap<>(kitchen.foods());
        Map<String, Dish> all = new LinkedHashMap<>(kitchen.dishes());
        Map<Food, List<Lot>> atHome = new LinkedHashMap<>(kitchen.pantry());
        for (LeftDish left : dishes) {
            foods.put(left.food().id(), left.food());
            all.put(left.dish().id(), left.dish());
            atHome.put(left.food(), List.of(Lot.of(left.grams())));
        }
        return kitchen.withFoods(foods).withDishes(all).on(kitchen.cookingDay(), atHome);
    }
}
