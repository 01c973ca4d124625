package batchwright.solve.rule;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import batchwright.plan.Seat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What may reach whom at all: dishes and snacks each eater allows, as far as their foods can be bought or are at home. This
 * is where the rule "avoid" is kept, and what can never be used leaves the model here.
 */
public final class Menu {
    private final Map<Seat, List<Dish>> dishes = new LinkedHashMap<>();
    private final Map<Seat, List<Measure>> snacks = new LinkedHashMap<>();
    private final List<Dish> allDishes;
    private final List<Pack> packs = new ArrayList<>();
    private final Map<Dish, List<Variant>> variants;

    public Menu(PlanRequest request) {
        this(request, Set.copyOf(request.kitchen().dishes().values()), new HashMap<>());
    }

    private Menu(PlanRequest request, Set<Dish> only, Map<Dish, List<Variant>> variants) {
        this.variants = variants;
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
        allDishes.forEach(dish -> variants.computeIfAbsent(dish, d -> variants(request, d)));
        Set<Food> usable = usableFoods(request);
        kitchen.packs().forEach((food, sold) -> {
            if (usable.contains(food)) {
                packs.addAll(sold);
            }
        });
    }

    /** Of the menu of this request only these dishes, as far as the eaters allow them. */
    public Menu only(PlanRequest request, Set<Dish> some) {
        return new Menu(request, some, variants);
    }

    private Menu(Menu all, Predicate<Food> atHand) {
        variants = all.variants;
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
                .filter(wishes::offersInPlans)
                .filter(m -> !request.kitchen().packsOf(m.food()).isEmpty()
                        || request.lastingGrams(m.food()).signum() > 0)
                .toList();
    }

    /** Whether what the part is made of, or what may take its place, can be bought or is at home. */
    private static boolean canGet(Kitchen kitchen, Part part) {
        return part.mix().stream().allMatch(i -> i.isPossible(food -> canGet(kitchen, food)));
    }

    /** Those for which all can be had, and which every eater of the dish allows in all its parts that they allow. */
    private List<Variant> variants(PlanRequest request, Dish dish) {
        return Variant.of(dish).stream()
                .filter(variant -> variant.swaps().stream()
                        .allMatch(swap -> swap.by()
                                .map(by -> canGet(request.kitchen(), by))
                                .orElse(true)))
                .filter(variant -> dishes.entrySet().stream()
                        .filter(mine -> mine.getValue().contains(dish))
                        .allMatch(mine -> allows(mine.getKey(), variant, dish)))
                .toList();
    }

    private boolean allows(Seat seat, Variant variant, Dish dish) {
        return seat.eater().wishes().allows(variant.dish())
                && dish.parts().stream().allMatch(part -> !allows(seat, part) || allows(seat, variant.cooked(part)));
    }

    private static boolean canGet(Kitchen kitchen, Food food) {
        return !kitchen.packsOf(food).isEmpty() || kitchen.pantryGrams(food).signum() > 0;
    }

    private Set<Food> usableFoods(PlanRequest request) {
        Set<Food> usable = new LinkedHashSet<>();
        allDishes.forEach(d -> usable.addAll(foods(d)));
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

    /** Other ways to cook a dish of the menu, besides as it is written. */
    public List<Variant> variants(Dish dish) {
        return variants.getOrDefault(dish, List.of());
    }

    /** What a dish is made of in one way or another. */
    public Set<Food> foods(Dish dish) {
        Set<Food> foods = new LinkedHashSet<>(dish.foods());
        variants(dish).forEach(variant -> foods.addAll(variant.dish().foods()));
        return foods;
    }

    /** The most of a food in a gram of a part, cooked in one way or another [g]. */
    public double mostShare(Dish dish, Part part, Food food) {
        return ways(dish, part)
                .mapToDouble(p -> p.shares().getOrDefault(food, BigDecimal.ZERO).doubleValue())
                .max()
                .orElse(0);
    }

    /** A part as it is written, and as each variant of the dish has it. */
    public Stream<Part> ways(Dish dish, Part part) {
        return Stream.concat(Stream.of(part), variants(dish).stream().map(variant -> variant.cooked(part)));
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
