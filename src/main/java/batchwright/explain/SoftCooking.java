package batchwright.explain;

import batchwright.food.Dish;
import batchwright.food.Kitchen;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import batchwright.plan.Variety;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;

/** Soft rules for cooking, which all eaters share. */
public final class SoftCooking {
    /** The most that can be asked for. */
    public static final int MOST_DISHES = 10;

    /** Minutes. */
    private static final int A_DAY = 24 * 60;

    /** Finer than minutes of a cook are known. */
    private static final int FEW_MINUTES = 10;

    private SoftCooking() {}

    /** Empty when every dish there is may be cooked. */
    static Optional<SoftRule> dishCount(PlanRequest request) {
        int now = request.mostDishes();
        int all = Math.min(MOST_DISHES, request.kitchen().dishes().size());
        if (now >= all) {
            return Optional.empty();
        }
        Loosening more = new Loosening(
                all - now,
                (r, units) -> r.withMostDishes(now + units),
                units -> "cook up to " + (now + units) + " dishes",
                units -> new Remedy.AllowDishes(now + units));
        return Optional.of(new SoftRule(
                "dish count",
                "at most " + Phrases.count(now, "dish is", "dishes are") + " cooked, each for at least "
                        + PlanRequest.LEAST_CONTAINERS_OF_A_DISH + " containers",
                r -> r.withMostDishes(all),
                List.of(List.of(more))));
    }

    /** Empty when one dish will do. */
    public static Optional<SoftRule> leastDishes(PlanRequest request) {
        int now = request.variety().leastDishes();
        if (now <= 1) {
            return Optional.empty();
        }
        Loosening fewer = new Loosening(
                now - 1,
                (r, units) -> r.withVariety(r.variety().withLeastDishes(now - units)),
                units -> "ask for at least " + Phrases.count(now - units, "dish", "dishes"),
                units -> new Remedy.AskForFewerDishes(now - units));
        return Optional.of(new SoftRule(
                "dish count",
                "at least " + now + " dishes are cooked, each for at least " + PlanRequest.LEAST_CONTAINERS_OF_A_DISH
                        + " containers",
                r -> r.withVariety(r.variety().withLeastDishes(1)),
                List.of(List.of(fewer))));
    }

    /** Empty when no more of them than may be cooked again are offered. */
    public static Optional<SoftRule> lastTime(PlanRequest request) {
        List<String> again = request.kitchen().dishes().values().stream()
                .filter(request.variety().lastTime()::contains)
                .map(Dish::name)
                .toList();
        if (again.size() <= Variety.MOST_AGAIN) {
            return Optional.empty();
        }
        return Optional.of(new SoftRule(
                "dish count",
                "at most one of last time's dishes is cooked again: " + Phrases.some(again),
                SoftCooking::anyOfLastTime,
                List.of(List.of(Loosening.once(
                        SoftCooking::anyOfLastTime, "allow all of them again", new Remedy.AllowLastTime())))));
    }

    private static PlanRequest anyOfLastTime(PlanRequest request) {
        return request.withVariety(request.variety().withLastTime(Set.of()));
    }

    /** Empty when no dish is asked for. One of them less; else none of them. */
    static Optional<SoftRule> askedFor(PlanRequest request) {
        Set<Dish> left = request.left().eaten();
        Set<Dish> asked = new LinkedHashSet<>(request.mustCook());
        asked.removeAll(left);
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        List<Loosening> one = new ArrayList<>();
        for (Dish dish : asked) {
            Set<Dish> others = new LinkedHashSet<>(request.mustCook());
            others.remove(dish);
            one.add(Loosening.once(
                    r -> r.withMustCook(others),
                    "not ask for " + dish.name(),
                    new Remedy.AskForLess(Optional.of(dish))));
        }
        Loosening none = Loosening.once(
                r -> r.withMustCook(left), "ask for none of them", new Remedy.AskForLess(Optional.empty()));
        return Optional.of(new SoftRule(
                "dishes asked for",
                Phrases.some(asked.stream().map(Dish::name).toList()) + (asked.size() == 1 ? " is" : " are")
                        + " cooked",
                r -> r.withMustCook(left),
                asked.size() == 1 ? List.of(one) : List.of(one, List.of(none))));
    }

    /** Empty when there is no limit. */
    static Optional<SoftRule> handsOnMinutes(PlanRequest request) {
        OptionalInt limit = request.kitchen().equipment().limits().handsOnMinutes();
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        int now = limit.getAsInt();
        Loosening longer = new Loosening(
                Math.max(0, A_DAY - now) / FEW_MINUTES,
                (r, units) -> handsOn(r, OptionalInt.of(now + units * FEW_MINUTES)),
                units -> "allow " + (now + units * FEW_MINUTES) + " minutes",
                units -> new Remedy.AllowMinutes(now + units * FEW_MINUTES));
        return Optional.of(new SoftRule(
                "hands-on minutes",
                "cooking, filling and washing up take the hands at most " + now + " minutes",
                r -> handsOn(r, OptionalInt.empty()),
                List.of(List.of(longer))));
    }

    private static PlanRequest handsOn(PlanRequest request, OptionalInt most) {
        Kitchen kitchen = request.kitchen();
        return request.withKitchen(kitchen.with(kitchen.equipment().withHandsOnMinutes(most)));
    }

    /** Empty when there is no limit. */
    static Optional<SoftRule> doneWithin(PlanRequest request) {
        OptionalInt limit = request.kitchen().equipment().limits().doneWithinMinutes();
        if (limit.isEmpty()) {
            return Optional.empty();
        }
        int now = limit.getAsInt();
        Loosening longer = new Loosening(
                Math.max(0, A_DAY - now) / FEW_MINUTES,
                (r, units) -> within(r, OptionalInt.of(now + units * FEW_MINUTES)),
                units -> "allow " + (now + units * FEW_MINUTES) + " minutes",
                units -> new Remedy.AllowTime(now + units * FEW_MINUTES));
        return Optional.of(new SoftRule(
                "time of a session",
                "cooking, filling and washing up are done within " + now + " minutes",
                r -> within(r, OptionalInt.empty()),
                List.of(List.of(longer))));
    }

    private static PlanRequest within(PlanRequest request, OptionalInt most) {
        Kitchen kitchen = request.kitchen();
        return request.withKitchen(kitchen.with(kitchen.equipment().withDoneWithinMinutes(most)));
    }

    /** Empty when every dish keeps for all days. Fewer days; else a dish frozen that is not; else all of them. */
    public static Optional<SoftRule> keeping(PlanRequest request) {
        List<Dish> spoil = request.kitchen().dishes().values().stream()
                .filter(d -> !d.keepsUntil(request.days()))
                .toList();
        if (spoil.isEmpty()) {
            return Optional.empty();
        }
        int days = request.days();
        Loosening fewerDays = new Loosening(
                days - 1,
                (r, units) -> r.withDays(days - units),
                units -> "plan " + Phrases.count(days - units, "day", "days") + " instead of " + days,
                units -> new Remedy.PlanDays(days - units));
        List<Loosening> one = new ArrayList<>();
        for (Dish dish : spoil) {
            one.add(Loosening.once(
                    r -> frozen(r, dish::equals),
                    "freeze " + dish.name() + ", but only if it is safe and good to eat after freezing",
                    new Remedy.Freeze(Optional.of(dish))));
        }
        Loosening all = Loosening.once(
                r -> frozen(r, d -> true),
                "freeze all of them, but only what is safe and good to eat after freezing",
                new Remedy.Freeze(Optional.empty()));
        return Optional.of(new SoftRule(
                "keeping",
                "what does not freeze is eaten within its fridge days: "
                        + Phrases.some(spoil.stream()
                                .map(d -> d.name() + " by day " + d.fridgeDays())
                                .toList()),
                r -> frozen(r, d -> true),
                List.of(List.of(fewerDays), one, List.of(all))));
    }

    private static PlanRequest frozen(PlanRequest request, Predicate<Dish> which) {
        Kitchen k = request.kitchen();
        Map<String, Dish> dishes = new LinkedHashMap<>(k.dishes());
        dishes.replaceAll((id, d) -> which.test(d)
                ? new Dish(
                        d.id(), d.name(), d.kind(), d.fridgeDays(), true, d.reheat(), d.parts(), d.staples(), d.steps())
                : d);
        return request.withKitchen(k.withDishes(dishes));
    }
}
