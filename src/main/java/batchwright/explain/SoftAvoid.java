package batchwright.explain;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.LeftOutForAll;
import batchwright.food.Part;
import batchwright.food.origin.Diet;
import batchwright.person.Avoided;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Soft rules for what an eater avoids: foods and dishes may be allowed again, diets only when nothing else helps, allergens never;
 * but a dish may be cooked without the part that holds them.
 */
final class SoftAvoid {
    /** So many pairs of dishes are looked at as these have. */
    private static final int FEW = 5;

    private final EaterInRequest at;
    private final Avoided now;
    private final Kitchen kitchen;

    private SoftAvoid(EaterInRequest at, Kitchen kitchen) {
        this.at = at;
        this.now = at.wishes().avoided();
        this.kitchen = kitchen;
    }

    /** None when this eater avoids nothing. */
    static List<SoftRule> of(EaterInRequest at, Kitchen kitchen) {
        var avoid = new SoftAvoid(at, kitchen);
        return Stream.of(avoid.foodsAndDishes(), avoid.dietsAndAllergens())
                .flatMap(Optional::stream)
                .toList();
    }

    /** One food or dish; if that is not enough, all of them. */
    private Optional<SoftRule> foodsAndDishes() {
        List<Loosening> one = new ArrayList<>();
        now.foods()
                .forEach(food -> one.add(again(
                        food.name() + " again",
                        Optional.of(food.id()),
                        now.with(less(now.foods(), food), now.allergens(), now.dishes()))));
        now.dishes()
                .forEach(dish -> one.add(again(
                        dish.name() + " again",
                        Optional.of(dish.id()),
                        now.with(now.foods(), now.allergens(), less(now.dishes(), dish)))));
        List<String> names = Stream.concat(
                        now.foods().stream().map(Food::name),
                        now.dishes().stream().map(Dish::name))
                .toList();
        Avoided none = now.with(Set.of(), now.allergens(), Set.of());
        return rule(names, none, tiers(one, "all of them again", none), Optional.empty());
    }

    /** One diet; if that is not enough, all of them. */
    private Optional<SoftRule> dietsAndAllergens() {
        List<Loosening> one = new ArrayList<>();
        now.diets()
                .forEach(diet -> one.add(
                        again(careful(diet.says()), Optional.of(diet.name()), now.withDiets(less(now.diets(), diet)))));
        List<String> names = Stream.concat(
                        now.diets().stream().map(Diet::says),
                        now.allergens().stream().sorted().map(Allergen::label))
                .toList();
        Avoided none = now.with(now.foods(), Set.of(), now.dishes()).withDiets(Set.of());
        List<Loosening> without = withoutParts();
        List<List<Loosening>> loosenings = new ArrayList<>(List.of(without, pairs(without)));
        loosenings.addAll(tiers(one, careful("all of these diets"), now.withDiets(Set.of())));
        return rule(names, none, loosenings, Optional.of(new Remedy.OfferAnotherDish()));
    }

    /** A dish without the parts that this eater must not have, cooked so for everybody: nothing less is avoided. */
    private List<Loosening> withoutParts() {
        List<Loosening> ways = new ArrayList<>();
        for (Dish dish : kitchen.dishes().values()) {
            List<Part> barred = dish.parts().stream()
                    .filter(Part::optional)
                    .filter(part -> !now.allows(part))
                    .toList();
            Optional<Dish> without = Optional.of(dish);
            for (Part part : barred) {
                without = without.flatMap(rest -> LeftOutForAll.of(rest, part));
            }
            if (!now.allows(dish)) {
                without.filter(now::allows).ifPresent(rest -> ways.add(without(dish, barred, rest)));
            }
        }
        return ways;
    }

    private static Loosening without(Dish dish, List<Part> parts, Dish rest) {
        return Loosening.once(
                request -> {
                    Map<String, Dish> dishes =
                            new LinkedHashMap<>(request.kitchen().dishes());
                    dishes.put(dish.id(), rest);
                    return request.withKitchen(request.kitchen().withDishes(dishes));
                },
                "cook " + dish.name() + " without its "
                        + Phrases.some(parts.stream().map(Part::name).toList()),
                new Remedy.LeaveOut(dish, parts));
    }

    /** Any two of a few. */
    private static List<Loosening> pairs(List<Loosening> ways) {
        List<Loosening> few = ways.subList(0, Math.min(FEW, ways.size()));
        List<Loosening> pairs = new ArrayList<>();
        for (int i = 0; i < few.size(); i++) {
            for (Loosening second : few.subList(i + 1, few.size())) {
                pairs.add(few.get(i).and(second));
            }
        }
        return pairs;
    }

    private List<List<Loosening>> tiers(List<Loosening> one, String all, Avoided none) {
        return one.size() <= 1 ? List.of(one) : List.of(one, List.of(again(all, Optional.empty(), none)));
    }

    private Optional<SoftRule> rule(
            List<String> names, Avoided none, List<List<Loosening>> loosenings, Optional<Remedy> instead) {
        if (names.isEmpty()) {
            return Optional.empty();
        }
        long left = kitchen.dishes().values().stream().filter(now::allows).count();
        return Optional.of(new SoftRule(
                "avoid",
                Phrases.some(names) + " never " + (names.size() == 1 ? "reaches " : "reach ") + at.name()
                        + ", who may eat " + left + " of "
                        + Phrases.count(kitchen.dishes().size(), "dish", "dishes"),
                request -> avoiding(request, none),
                loosenings,
                instead));
    }

    private static String careful(String diet) {
        return diet + " again, but only if that is no allergy or intolerance";
    }

    private Loosening again(String what, Optional<String> id, Avoided less) {
        return Loosening.once(
                request -> avoiding(request, less), "allow " + what, new Remedy.AvoidLess(at.eater(), id));
    }

    private PlanRequest avoiding(PlanRequest request, Avoided less) {
        return at.withWishes(request, (Wishes w) -> w.with(merged(w.avoided(), less)));
    }

    /** What both avoid: another rule may have been loosened before this one. */
    private static Avoided merged(Avoided one, Avoided other) {
        return one.with(
                        both(one.foods(), other.foods()),
                        both(one.allergens(), other.allergens()),
                        both(one.dishes(), other.dishes()))
                .withDiets(both(one.diets(), other.diets()));
    }

    private static <T> Set<T> both(Set<T> one, Set<T> other) {
        Set<T> both = new HashSet<>(one);
        both.retainAll(other);
        return both;
    }

    private static <T> Set<T> less(Set<T> all, T one) {
        Set<T> rest = new HashSet<>(all);
        rest.remove(one);
        return rest;
    }
}
