package batchwright.explain;

import batchwright.food.Allergen;
import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.origin.Diet;
import batchwright.person.Avoided;
import batchwright.person.Wishes;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Soft rules for how an eater likes to be fed. */
final class SoftWishes {
    /** The most that a profile may ask for. */
    static final int MOST_MEASURES = 12;

    static final int MOST_KINDS = 6;
    static final int MOST_CONTAINERS = 6;

    private SoftWishes() {}

    /**
     * So many containers more or less, fewest first. Another count is no looser rule.
     */
    static SoftRule containersADay(EaterInRequest at, int dishes, int mostMoreOrLess) {
        int now = at.wishes().containersADay();
        List<List<Loosening>> loosenings = new ArrayList<>();
        for (int change = 1; change <= mostMoreOrLess; change++) {
            loosenings.add(Stream.of(now + change, now - change)
                    .filter(other -> other >= 1 && other <= MOST_CONTAINERS)
                    .map(other -> containers(at, other))
                    .toList());
        }
        return SoftRule.ofOtherFigures(
                "containers a day",
                at.name() + " gets exactly " + Phrases.count(now, "container", "containers")
                        + " a day, of one dish at most "
                        + at.wishes().meals().sameDishADay() + "; " + Phrases.count(dishes, "dish", "dishes")
                        + " can be served",
                loosenings);
    }

    /** Another count of containers a day. */
    static Loosening containers(EaterInRequest at, int other) {
        return Loosening.once(
                request -> at.withWishes(request, w -> w.withContainersADay(other)),
                "ask for " + other + " a day",
                new Remedy.ChangeContainers(at.eater(), other));
    }

    static SoftRule snackLimits(EaterInRequest at) {
        Wishes now = at.wishes();
        int measures = now.snackMeasuresADay();
        int kinds = now.snackKindsADay();
        Loosening moreMeasures = new Loosening(
                MOST_MEASURES - measures,
                (request, k) ->
                        at.withWishes(request, w -> w.withSnacks(w.snackFoods(), measures + k, w.snackKindsADay())),
                k -> "allow " + Phrases.count(measures + k, "measure", "measures") + " a day",
                k -> snacks(at, OptionalInt.of(measures + k), OptionalInt.empty()));
        Loosening moreKinds = new Loosening(
                MOST_KINDS - kinds,
                (request, k) ->
                        at.withWishes(request, w -> w.withSnacks(w.snackFoods(), w.snackMeasuresADay(), kinds + k)),
                k -> "allow " + Phrases.count(kinds + k, "kind", "kinds") + " a day",
                k -> snacks(at, OptionalInt.empty(), OptionalInt.of(kinds + k)));
        Loosening moreOfBoth = new Loosening(
                Math.max(moreMeasures.reach(), moreKinds.reach()),
                (request, k) -> at.withWishes(
                        request,
                        w -> w.withSnacks(
                                w.snackFoods(), upTo(MOST_MEASURES, measures + k), upTo(MOST_KINDS, kinds + k))),
                k -> "allow " + Phrases.count(upTo(MOST_MEASURES, measures + k), "measure", "measures") + " and "
                        + Phrases.count(upTo(MOST_KINDS, kinds + k), "kind", "kinds") + " a day",
                k -> snacks(
                        at,
                        OptionalInt.of(upTo(MOST_MEASURES, measures + k)),
                        OptionalInt.of(upTo(MOST_KINDS, kinds + k))));
        List<List<Loosening>> loosenings =
                new ArrayList<>(List.of(List.of(moreMeasures, moreKinds), List.of(moreOfBoth)));
        if (now.snackFoods().isPresent()) {
            loosenings.add(List.of(Loosening.once(
                    request -> at.withWishes(request, w -> w.withSnacks(Optional.empty(), measures, kinds)),
                    "offer every snack",
                    new Remedy.OfferEverySnack(at.eater()))));
        }
        return new SoftRule(
                "snack limits",
                at.name() + " eats at most " + Phrases.count(measures, "measure", "measures")
                        + " of snacks a day, of at most " + Phrases.count(kinds, "kind", "kinds")
                        + now.snackFoods().map(SoftWishes::only).orElse(""),
                request -> at.withWishes(request, w -> w.withSnacks(Optional.empty(), MOST_MEASURES, MOST_KINDS)),
                loosenings);
    }

    private static String only(Set<Food> foods) {
        return ", only of " + Phrases.some(foods.stream().map(Food::name).toList());
    }

    private static Remedy snacks(EaterInRequest at, OptionalInt measures, OptionalInt kinds) {
        return new Remedy.AllowSnacks(at.eater(), measures, kinds);
    }

    private static int upTo(int most, int wanted) {
        return Math.min(most, wanted);
    }

    /** Empty when this eater avoids nothing. One thing allowed again; if that is not enough, all of them. */
    static Optional<SoftRule> avoid(EaterInRequest at, Kitchen kitchen) {
        Wishes now = at.wishes();
        List<String> names = Stream.of(
                        now.avoided().diets().stream().map(Diet::says),
                        now.avoidAllergens().stream().map(Allergen::label),
                        now.avoidFoods().stream().map(Food::name),
                        now.avoidDishes().stream().map(Dish::name))
                .flatMap(s -> s)
                .toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        List<Loosening> one = new ArrayList<>();
        now.avoidFoods()
                .forEach(food -> one.add(again(
                        at,
                        food.name() + " again",
                        Optional.of(food.id()),
                        without(now, Set.of(food), Set.of(), Set.of()))));
        now.avoidDishes()
                .forEach(dish -> one.add(again(
                        at,
                        dish.name() + " again",
                        Optional.of(dish.id()),
                        without(now, Set.of(), Set.of(), Set.of(dish)))));
        now.avoidAllergens().stream()
                .sorted()
                .forEach(a -> one.add(again(
                        at, careful(a.label()), Optional.of(a.id()), without(now, Set.of(), Set.of(a), Set.of()))));
        now.avoided()
                .diets()
                .forEach(diet -> one.add(again(
                        at,
                        careful(diet.says()),
                        Optional.of(diet.name()),
                        now.with(now.avoided().withDiets(less(now.avoided().diets(), Set.of(diet)))))));
        Wishes nothing = now.with(Avoided.NOTHING);
        Loosening all = again(
                at,
                now.avoidAllergens().isEmpty() && now.avoided().diets().isEmpty()
                        ? "all of them again"
                        : careful("all of them"),
                Optional.empty(),
                nothing);
        long left = kitchen.dishes().values().stream().filter(now::allows).count();
        return Optional.of(new SoftRule(
                "avoid",
                Phrases.some(names) + " never " + (names.size() == 1 ? "reaches " : "reach ") + at.name()
                        + ", who may eat " + left + " of "
                        + Phrases.count(kitchen.dishes().size(), "dish", "dishes"),
                request -> at.withWishes(request, w -> avoiding(w, nothing)),
                List.of(one, names.size() == 1 ? List.of() : List.of(all))));
    }

    private static String careful(String allergen) {
        return allergen + " again, but only if that is no allergy or intolerance";
    }

    private static Loosening again(EaterInRequest at, String what, Optional<String> id, Wishes less) {
        return Loosening.once(
                request -> at.withWishes(request, w -> avoiding(w, less)),
                "allow " + what,
                new Remedy.AvoidLess(at.eater(), id));
    }

    private static Wishes avoiding(Wishes wishes, Wishes less) {
        return wishes.with(less.avoided());
    }

    private static Wishes without(Wishes now, Set<Food> foods, Set<Allergen> allergens, Set<Dish> dishes) {
        return now.withAvoided(
                less(now.avoidFoods(), foods), less(now.avoidAllergens(), allergens), less(now.avoidDishes(), dishes));
    }

    private static <T> Set<T> less(Set<T> all, Set<T> some) {
        Set<T> rest = new HashSet<>(all);
        rest.removeAll(some);
        return rest;
    }
}
