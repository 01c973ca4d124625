package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What may reach whom at all: dishes and snacks each eater allows, as far as their foods can be bought or are at home. This
 * is where the rule "avoid" is kept, and what can never be used leaves the model here.
 */
public final class Menu {
    private final Map<Seat, List<Dish>> dishes = new LinkedHashMap<>();
    private final Map<Seat, List<Measure>> snacks = new LinkedHashMap<>();
    private final List<Dish> allDishes;
    private final List<Pack> packs = new ArrayList<>();

    public Menu(PlanRequest request) {
        this(request, Set.copyOf(request.kitchen().dishes().values()));
    }

    /** Only these dishes, as far as the eaters allow them. */
    public Menu(PlanRequest request, Set<Dish> only) {
        Kitchen kitchen = request.kitchen();
        Set<Dish> offered = new LinkedHashSet<>();
        for (Seat seat : request.seats()) {
            List<Dish> mine = kitchen.dishes().values().stream()
                    .filter(only::contains)
                    .filter(d -> seat.eater().wishes().allows(d))
                    .filter(d -> seat.eater().wishes().mostADay(d) > 0)
                    .filter(d -> d.parts().stream().allMatch(p -> p.optional() || canGet(kitchen, p)))
                    .toList();
            dishes.put(seat, mine);
            offered.addAll(mine);
            snacks.put(seat, snacksFor(request, seat));
        }
        allDishes = kitchen.dishes().values().stream().filter(offered::contains).toList();
        Set<Food> usable = usableFoods(request);
        kitchen.packs().forEach((food, sold) -> {
            if (usable.contains(food)) {
                packs.addAll(sold);
            }
        });
    }

    private Menu(Menu all, Predicate<Food> atHand) {
        dishes.putAll(all.dishes);
        allDishes = all.allDishes;
        packs.addAll(all.packs);
        all.snacks.forEach((seat, offered) -> snacks.put(
                seat, offered.stream().filter(m -> atHand.test(m.food())).toList()));
    }

    /** The same with only those snacks whose food is at hand. */
    public Menu withSnacksOf(Predicate<Food> atHand) {
        return new Menu(this, atHand);
    }

    private static List<Measure> snacksFor(PlanRequest request, Seat seat) {
        var wishes = seat.eater().wishes();
        return request.kitchen().snackMeasures().stream()
                .filter(m -> wishes.offersAsSnack(m.food()))
                .filter(m -> !request.kitchen().packsOf(m.food()).isEmpty()
                        || request.lastingGrams(m.food()).signum() > 0)
                .toList();
    }

    private static boolean canGet(Kitchen kitchen, Part part) {
        return part.mix().stream().allMatch(i -> canGet(kitchen, i.food()));
    }

    private static boolean canGet(Kitchen kitchen, Food food) {
        return !kitchen.packsOf(food).isEmpty() || kitchen.pantryGrams(food).signum() > 0;
    }

    private Set<Food> usableFoods(PlanRequest request) {
        Set<Food> usable = new LinkedHashSet<>();
        allDishes.forEach(d -> usable.addAll(d.foods()));
        snacks.values().forEach(list -> list.forEach(m -> usable.add(m.food())));
        request.seats()
                .forEach(s -> s.eater()
                        .wishes()
                        .always()
                        .forEach(a -> usable.add(a.measure().food())));
        return usable;
    }

    /** Dishes that may be served to this eater, in the order of the files. */
    public List<Dish> dishes(Seat seat) {
        return dishes.getOrDefault(seat, List.of());
    }

    /** Dishes that may be served to anybody. */
    public List<Dish> dishes() {
        return allDishes;
    }

    public List<Measure> snacks(Seat seat) {
        return snacks.getOrDefault(seat, List.of());
    }

    /** Packs of foods that can be used at all. */
    public List<Pack> packs() {
        return packs;
    }

    /** Whether this optional part may be served to this eater. */
    public boolean allows(Seat seat, Part part) {
        return seat.eater().wishes().allows(part);
    }
}
