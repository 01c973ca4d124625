package batchwright.explain;

import batchwright.food.Dish.Kind;
import batchwright.food.Kitchen;
import batchwright.person.Meals;
import batchwright.person.TimesADay;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;

/** The soft rule for how many of an eater's containers are for one meal. */
final class SoftMeal {
    private final EaterInRequest at;
    private final Remedy.Meal meal;
    private final Kind kind;
    private final int least;
    private final int most;
    private final BiFunction<Meals, TimesADay, Meals> change;

    private SoftMeal(
            EaterInRequest at,
            Remedy.Meal meal,
            Kind kind,
            TimesADay now,
            int most,
            BiFunction<Meals, TimesADay, Meals> change) {
        this.at = at;
        this.meal = meal;
        this.kind = kind;
        this.least = now.least();
        this.most = most;
        this.change = change;
    }

    static List<SoftMeal> of(EaterInRequest at) {
        Meals now = at.wishes().meals();
        int containers = at.wishes().containersADay();
        return List.of(
                new SoftMeal(
                        at,
                        Remedy.Meal.DINNERS,
                        Kind.DINNER,
                        now.dinners(),
                        now.mostDinners(containers),
                        (meals, times) -> meals.withLunchesAndDinners(meals.lunches(), times)),
                new SoftMeal(
                        at,
                        Remedy.Meal.LUNCHES,
                        Kind.LUNCH,
                        now.lunches(),
                        now.mostLunches(containers),
                        (meals, times) -> meals.withLunchesAndDinners(times, meals.dinners())),
                new SoftMeal(
                        at,
                        Remedy.Meal.BREAKFASTS,
                        Kind.BREAKFAST,
                        now.breakfasts(),
                        now.mostBreakfasts(),
                        Meals::withBreakfasts));
    }

    /** Empty when every plan keeps it: nothing is asked for, and either every container may be one or no dish is for this meal only. */
    Optional<SoftRule> softRule(Kitchen kitchen) {
        int containers = at.wishes().containersADay();
        Meals now = at.wishes().meals();
        boolean tooFew =
                kind != Kind.BREAKFAST && now.mostLunches(containers) + now.mostDinners(containers) < containers;
        boolean binds = least > 0
                || tooFew
                || (most < containers && kitchen.dishes().values().stream().anyMatch(dish -> dish.kind() == kind));
        return binds
                ? Optional.of(new SoftRule(
                        "meals",
                        at.name() + " has " + range(least, most) + " a day, and " + one() + " dishes for nothing else",
                        request -> with(request, 0, containers),
                        List.of(List.of(looser(least, -1, 0), looser(Math.max(0, containers - most), 0, 1)))))
                : Optional.empty();
    }

    private Loosening looser(int reach, int ofLeast, int ofMost) {
        return new Loosening(
                reach,
                (request, k) -> with(request, least + k * ofLeast, most + k * ofMost),
                k -> "ask for " + range(least + k * ofLeast, most + k * ofMost) + " a day",
                k -> new Remedy.ChangeMeal(at.eater(), meal, least + k * ofLeast, most + k * ofMost));
    }

    private PlanRequest with(PlanRequest request, int atLeast, int atMost) {
        return at.withWishes(request, w -> w.with(change.apply(w.meals(), TimesADay.of(atLeast, atMost))));
    }

    /** Breakfast. */
    private String one() {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** Exactly 1 breakfast; at most 1 breakfast; 1 to 2 breakfasts. */
    private String range(int from, int to) {
        String many = Phrases.count(to, one(), meal.name().toLowerCase(Locale.ROOT));
        if (from == to) {
            return "exactly " + many;
        }
        return from == 0 ? "at most " + many : from + " to " + many;
    }
}
