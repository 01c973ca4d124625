package batchwright.solve;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Ingredient;
import batchwright.food.Instead;
import batchwright.food.Kitchen;
import batchwright.food.Part;
import batchwright.food.Variant;
import batchwright.plan.PlanRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;

/** A random request in whose dishes some foods may be swapped or left out. */
public final class SwapVariants {
    /** Dishes with swaps; an enumeration goes through all their variants together. */
    private static final int MOST_DISHES = 2;

    private final Random random;
    private final PlanRequest request;

    private SwapVariants(PlanRequest request, long seed) {
        this.request = request;
        this.random = new Random(seed);
    }

    public static PlanRequest of(PlanRequest request, long seed) {
        var variants = new SwapVariants(request, seed);
        return request.withKitchen(variants.kitchen(request.kitchen()));
    }

    private Kitchen kitchen(Kitchen kitchen) {
        Map<String, Dish> dishes = new LinkedHashMap<>(kitchen.dishes());
        List<Dish> some = new ArrayList<>(kitchen.dishes().values());
        Collections.shuffle(some, random);
        some.stream().limit(MOST_DISHES).forEach(dish -> dishes.put(dish.id(), dish(dish)));
        return kitchen.withDishes(dishes);
    }

    private Dish dish(Dish d) {
        List<Part> parts = d.parts().stream().map(this::part).toList();
        return new Dish(
                d.id(), d.name(), d.kind(), d.fridgeDays(), d.freezes(), d.reheat(), parts, d.staples(), d.steps());
    }

    private Part part(Part p) {
        if (p.pieces() || !everybodyEats(p.mix().get(0).food())) {
            return p;
        }
        List<Ingredient> mix = new ArrayList<>(p.mix());
        Ingredient one = mix.get(0);
        List<Food> others = new ArrayList<>(request.kitchen().foods().values());
        others.removeIf(food -> p.shares().containsKey(food) || !everybodyEats(food));
        Collections.shuffle(others, random);
        boolean nothing = mix.size() > 1 && random.nextInt(3) == 0;
        List<Ingredient> instead = others.stream()
                .limit(nothing ? 0 : 1 + random.nextInt(4) / 3)
                .map(food -> new Ingredient(food, one.amount(), Optional.empty()))
                .toList();
        mix.set(
                0,
                new Ingredient(
                        one.food(), one.amount(), Optional.empty(), Optional.empty(), new Instead(instead, nothing)));
        return new Part(p.name(), p.optional(), p.stepGrams(), p.pieces(), p.leastGrams(), p.mostGrams(), mix);
    }

    private boolean everybodyEats(Food food) {
        return request.seats().stream()
                .map(seat -> seat.eater().wishes())
                .allMatch(wishes -> !wishes.avoidFoods().contains(food)
                        && Collections.disjoint(food.allergens(), wishes.avoidAllergens()));
    }

    /** The least cost over all kitchens in which each dish is written as one of its variants. */
    public static OptionalLong leastCost(PlanRequest request) {
        List<Map<String, Dish>> kitchens = List.of(new LinkedHashMap<>());
        for (Dish dish : request.kitchen().dishes().values()) {
            List<Dish> ways = new ArrayList<>(List.of(dish));
            Variant.of(dish).forEach(variant -> ways.add(variant.dish()));
            List<Map<String, Dish>> longer = new ArrayList<>();
            for (Map<String, Dish> sofar : kitchens) {
                for (Dish way : ways) {
                    Map<String, Dish> next = new LinkedHashMap<>(sofar);
                    next.put(dish.id(), way);
                    longer.add(next);
                }
            }
            kitchens = longer;
        }
        return kitchens.stream()
                .map(dishes -> BruteForce.leastCost(
                        request.withKitchen(request.kitchen().withDishes(dishes))))
                .flatMapToLong(OptionalLong::stream)
                .min();
    }
}
