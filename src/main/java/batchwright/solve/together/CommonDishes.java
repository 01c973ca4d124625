package batchwright.solve.together;

import batchwright.food.Dish;
import batchwright.plan.Seat;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which dishes are cooked for all: from those that each would have, one after another is left out until no more are left than can be cooked.
 * Of the few that least is eaten of, it is the one whose eaters are served by the others at the least cost. A heuristic.
 */
final class CommonDishes {
    /** Looked at each time. */
    private static final int LOOKED_AT = 3;

    private final ForOne forOne;
    private final AtOnce atOnce;
    private Map<Seat, MealsOfOne> meals = new LinkedHashMap<>();

    /** Cannot be done without: somebody would have nothing. */
    private final Set<Dish> needed = new HashSet<>();

    private CommonDishes(ForOne forOne, AtOnce atOnce) {
        this.forOne = forOne;
        this.atOnce = atOnce;
    }

    /**
     * @param free what each would have alone, in the order of the eaters
     * @return what each has of the common dishes; empty when no set was found that serves all
     */
    static Optional<List<MealsOfOne>> of(List<MealsOfOne> free, ForOne forOne, AtOnce atOnce) {
        var common = new CommonDishes(forOne, atOnce);
        free.forEach(one -> common.meals.put(one.seat(), one));
        return common.choose() ? Optional.of(common.ofFew()) : Optional.empty();
    }

    private boolean choose() {
        List<Dish> dishes = dishes();
        while (dishes.size() > forOne.all().mostDishes()) {
            Optional<Map<Seat, MealsOfOne>> cheapest = leastEaten(dishes).stream()
                    .flatMap(dish -> without(dish).stream())
                    .min(Comparator.comparingLong(CommonDishes::cost));
            cheapest.ifPresent(found -> meals = found);
            dishes = dishes();
            if (cheapest.isEmpty() && needed.containsAll(dishes)) {
                return false;
            }
        }
        return true;
    }

    /** Each once more, now that there are few dishes to choose among: with the same work more is found. */
    private List<MealsOfOne> ofFew() {
        Set<Dish> few = new HashSet<>(dishes());
        return atOnce.each(
                List.copyOf(meals.values()),
                one -> forOne.meals(one.seat(), few)
                        .filter(other -> other.cost() < one.cost())
                        .orElse(one));
    }

    /** Those that somebody eats, in the order of the files. */
    private List<Dish> dishes() {
        Set<Dish> eaten = new HashSet<>();
        meals.values().forEach(one -> eaten.addAll(one.dishes()));
        return forOne.all().kitchen().dishes().values().stream()
                .filter(eaten::contains)
                .toList();
    }

    private List<Dish> leastEaten(List<Dish> dishes) {
        return dishes.stream()
                .filter(dish -> !needed.contains(dish))
                .sorted(Comparator.comparingInt(dish -> meals.values().stream()
                        .mapToInt(one -> one.containersOf(dish))
                        .sum()))
                .limit(LOOKED_AT)
                .toList();
    }

    /** What all eat when this dish is not cooked; empty when somebody has none. */
    private Optional<Map<Seat, MealsOfOne>> without(Dish dish) {
        Set<Dish> others = new HashSet<>(dishes());
        others.remove(dish);
        List<MealsOfOne> eaters = meals.values().stream()
                .filter(one -> one.dishes().contains(dish))
                .toList();
        List<Optional<MealsOfOne>> served = atOnce.each(eaters, one -> forOne.meals(one.seat(), others));
        Map<Seat, MealsOfOne> changed = new LinkedHashMap<>(meals);
        for (Optional<MealsOfOne> one : served) {
            if (one.isEmpty()) {
                needed.add(dish);
                return Optional.empty();
            }
            changed.put(one.get().seat(), one.get());
        }
        return Optional.of(changed);
    }

    private static long cost(Map<Seat, MealsOfOne> meals) {
        return meals.values().stream().mapToLong(MealsOfOne::cost).sum();
    }
}
