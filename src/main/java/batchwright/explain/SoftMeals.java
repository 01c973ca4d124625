package batchwright.explain;

import batchwright.food.Kitchen;
import batchwright.person.Meals;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Soft rules for what an eater's containers are for, and how often the same dish may come. */
final class SoftMeals {
    private SoftMeals() {}

    static List<SoftRule> of(EaterInRequest at, Kitchen kitchen) {
        List<SoftRule> softRules = new ArrayList<>();
        Meals now = at.wishes().meals();
        for (SoftMeal meal : SoftMeal.of(at)) {
            meal.softRule(kitchen).ifPresent(softRules::add);
        }
        if (now.sameDishADay() < Meals.MOST_OF_A_DISH_A_DAY
                || now.sameDishInAll().isPresent()) {
            softRules.add(sameDish(at, now));
        }
        return softRules;
    }

    /** Empty when all that is offered goes together anyway. */
    static Optional<SoftRule> snackPairs(EaterInRequest at, Kitchen kitchen) {
        boolean binds = !at.wishes().meals().anySnacks()
                && kitchen.snackMeasures().stream()
                        .filter(at.wishes()::offersInPlans)
                        .anyMatch(m -> m.isSpread() || m.isOneOfItsKind());
        return binds
                ? Optional.of(new SoftRule(
                        "snack pairs",
                        at.name() + " eats spreads on something, and one snack of a kind a day, such as one milk",
                        request -> anySnacks(at, request),
                        List.of(List.of(Loosening.once(
                                request -> anySnacks(at, request),
                                "allow any snacks on one day",
                                new Remedy.AllowAnySnacks(at.eater()))))))
                : Optional.empty();
    }

    private static PlanRequest anySnacks(EaterInRequest at, PlanRequest request) {
        return at.withWishes(request, w -> w.with(w.meals().withAnySnacks(true)));
    }

    private static SoftRule sameDish(EaterInRequest at, Meals now) {
        List<Loosening> one = new ArrayList<>();
        one.add(new Loosening(
                Meals.MOST_OF_A_DISH_A_DAY - now.sameDishADay(),
                (request, k) -> sameDish(at, request, now.sameDishADay() + k, now.sameDishInAll()),
                k -> "allow it " + times(now.sameDishADay() + k) + " a day",
                k -> new Remedy.AllowSameDish(
                        at.eater(), OptionalInt.of(now.sameDishADay() + k), OptionalInt.empty())));
        now.sameDishInAll()
                .ifPresent(most -> one.add(new Loosening(
                        at.wishes().containersADay() * PlanRequest.MOST_DAYS,
                        (request, k) -> sameDish(at, request, now.sameDishADay(), OptionalInt.of(most + k)),
                        k -> "allow it " + times(most + k) + " in all",
                        k -> new Remedy.AllowSameDish(at.eater(), OptionalInt.empty(), OptionalInt.of(most + k)))));
        return new SoftRule(
                "same dish",
                at.name() + " gets the same dish at most " + times(now.sameDishADay()) + " a day"
                        + (now.sameDishInAll().isPresent()
                                ? " and " + times(now.sameDishInAll().getAsInt()) + " in all"
                                : ""),
                request -> sameDish(at, request, Meals.MOST_OF_A_DISH_A_DAY, OptionalInt.empty()),
                List.of(one));
    }

    private static PlanRequest sameDish(EaterInRequest at, PlanRequest request, int aDay, OptionalInt inAll) {
        return at.withWishes(request, w -> w.with(w.meals().withSameDish(aDay, inAll)));
    }

    private static String times(int count) {
        return Phrases.count(count, "time", "times");
    }
}
