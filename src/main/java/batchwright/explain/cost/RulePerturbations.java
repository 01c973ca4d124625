package batchwright.explain.cost;

import batchwright.explain.EaterInRequest;
import batchwright.explain.SoftCooking;
import batchwright.explain.SoftWishes;
import batchwright.food.Shops;
import batchwright.person.Wishes;
import batchwright.plan.PlanRequest;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Every rule whose cost is worth asking for: limits, changed as {@link LimitPerturbations} says, and what counts something, changed by
 * one. Allergens are left out: nobody should save on them.
 */
public final class RulePerturbations {
    private final PlanRequest request;

    private RulePerturbations(PlanRequest request) {
        this.request = request;
    }

    static List<RulePerturbation> of(PlanRequest request) {
        var rules = new RulePerturbations(request);
        List<RulePerturbation> all = new ArrayList<>();
        EaterInRequest.all(request).forEach(at -> all.addAll(of(at)));
        all.add(rules.dishCount());
        rules.leastDishes().ifPresent(all::add);
        rules.lastTime().ifPresent(all::add);
        rules.keeping().ifPresent(all::add);
        rules.reserve().ifPresent(all::add);
        return all;
    }

    private static List<RulePerturbation> of(EaterInRequest at) {
        List<RulePerturbation> all = new ArrayList<>(LimitPerturbations.of(at));
        all.addAll(snacks(at));
        all.addAll(avoided(at));
        return all;
    }

    private static List<RulePerturbation> snacks(EaterInRequest at) {
        Wishes now = at.wishes();
        return List.of(
                count(
                        "snack measures a day",
                        Optional.of(at.name()),
                        now.snackMeasuresADay(),
                        0,
                        SoftWishes.MOST_MEASURES,
                        (r, n) -> at.withWishes(r, w -> w.withSnacks(w.snackFoods(), n, w.snackKindsADay()))),
                count(
                        "snack kinds a day",
                        Optional.of(at.name()),
                        now.snackKindsADay(),
                        1,
                        SoftWishes.MOST_KINDS,
                        (r, n) -> at.withWishes(r, w -> w.withSnacks(w.snackFoods(), w.snackMeasuresADay(), n))));
    }

    private RulePerturbation dishCount() {
        return count(
                "dish count",
                Optional.empty(),
                request.mostDishes(),
                1,
                Math.min(SoftCooking.MOST_DISHES, request.kitchen().dishes().size()),
                PlanRequest::withMostDishes);
    }

    /** Empty when one dish will do. */
    private Optional<RulePerturbation> leastDishes() {
        return SoftCooking.leastDishes(request)
                .map(softRule -> count(
                        "least dishes",
                        Optional.empty(),
                        request.variety().leastDishes(),
                        1,
                        request.mostDishes(),
                        (r, n) -> r.withVariety(r.variety().withLeastDishes(n))));
    }

    private Optional<RulePerturbation> lastTime() {
        return SoftCooking.lastTime(request)
                .map(softRule -> new RulePerturbation(
                        "last time's dishes",
                        Optional.empty(),
                        "one again",
                        Optional.of(new Change("all again", softRule.dropped())),
                        Optional.empty()));
    }

    private interface Count {
        PlanRequest to(PlanRequest request, int count);
    }

    /** One more, one less. */
    private static RulePerturbation count(
            String rule, Optional<String> eater, int now, int least, int most, Count set) {
        return new RulePerturbation(
                rule,
                eater,
                Integer.toString(now),
                Optional.of(now + 1).filter(n -> n <= most).map(n -> new Change("" + n, r -> set.to(r, n))),
                Optional.of(now - 1).filter(n -> n >= least).map(n -> new Change("" + n, r -> set.to(r, n))));
    }

    private static List<RulePerturbation> avoided(EaterInRequest at) {
        List<RulePerturbation> all = new ArrayList<>();
        at.wishes()
                .avoidFoods()
                .forEach(food -> all.add(again(
                        at,
                        food.name(),
                        w -> w.withAvoided(less(w.avoidFoods(), food), w.avoidAllergens(), w.avoidDishes()))));
        at.wishes()
                .avoidDishes()
                .forEach(dish -> all.add(again(
                        at,
                        dish.name(),
                        w -> w.withAvoided(w.avoidFoods(), w.avoidAllergens(), less(w.avoidDishes(), dish)))));
        return all;
    }

    private static RulePerturbation again(EaterInRequest at, String name, UnaryOperator<Wishes> less) {
        return new RulePerturbation(
                "avoid " + name,
                Optional.of(at.name()),
                "avoided",
                Optional.of(new Change("allowed", r -> at.withWishes(r, less))),
                Optional.empty());
    }

    private static <T> Set<T> less(Set<T> all, T one) {
        Set<T> rest = new HashSet<>(all);
        rest.remove(one);
        return rest;
    }

    /** What does not freeze, frozen. */
    private Optional<RulePerturbation> keeping() {
        return SoftCooking.keeping(request)
                .map(softRule -> new RulePerturbation(
                        "keeping",
                        Optional.empty(),
                        "fridge days",
                        Optional.of(new Change("all freeze", softRule.dropped())),
                        Optional.empty()));
    }

    /** Room to spare that a cook wants, none. */
    private Optional<RulePerturbation> reserve() {
        Shops shops = request.kitchen().shops();
        return shops.keepsReserve()
                ? Optional.of(new RulePerturbation(
                        "room to spare of what is weighed [%]",
                        Optional.empty(),
                        shops.reserve().movePointRight(2).stripTrailingZeros().toPlainString(),
                        Optional.of(new Change("0", RulePerturbations::withoutReserve)),
                        Optional.empty()))
                : Optional.empty();
    }

    private static PlanRequest withoutReserve(PlanRequest request) {
        return request.withKitchen(
                request.kitchen().with(request.kitchen().shops().withReserve(BigDecimal.ZERO)));
    }
}
