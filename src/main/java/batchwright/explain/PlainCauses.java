package batchwright.explain;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.person.Meals;
import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Remedy;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Why there is no plan, where counting alone shows it: no search finds a better sentence. */
final class PlainCauses {
    private static final int A_DAY = Meals.MOST_OF_A_DISH_A_DAY;
    private static final String RULE = "containers a day";
    private static final Loosening TWO_DAYS =
            Loosening.once(request -> request.withDays(2), "plan 2 days", new Remedy.PlanDays(2));

    private final PlanRequest request;

    /** What only shops sell that nobody goes to is left to the search: it knows where to go besides. */
    PlainCauses(PlanRequest request) {
        this.request = request.kitchen().shops().elsewhere().isEmpty()
                ? request
                : request.withKitchen(request.kitchen().onlyAt(shop -> true));
    }

    /**
     * A rule that cannot hold, whatever else is changed.
     *
     * @param at whose rule it is
     * @param softRule its loosenings are other figures to try; dropping it is no way out
     * @param otherwise what may help when none of them does
     */
    record Cause(EaterInRequest at, SoftRule softRule, Remedy otherwise) {
        Clash clash(Cure cure) {
            return cure.found().isPresent() ? cure.clash(true) : softRule.clash("", Optional.of(otherwise), true);
        }
    }

    /** Of the first eater who has one. */
    Optional<Cause> first() {
        return all().stream().findFirst();
    }

    /** One of each eater who has one: his first. */
    List<Cause> all() {
        return EaterInRequest.all(request).stream()
                .flatMap(at -> first(at).stream())
                .toList();
    }

    private Optional<Cause> first(EaterInRequest at) {
        List<Function<EaterInRequest, Optional<Cause>>> causes =
                List.of(this::nothingToCook, this::alwaysMissing, this::nothingToBuy, this::tooFewDishes, this::oneDay);
        return causes.stream()
                .map(cause -> cause.apply(at))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<Cause> nothingToCook(EaterInRequest at) {
        return when(
                request.kitchen().dishes().isEmpty(),
                () -> cause(
                        at,
                        RULE,
                        at.name() + " gets exactly " + containers(at) + " a day, and there is no dish to fill them",
                        List.of(),
                        new Remedy.WriteDishes()));
    }

    private Optional<Cause> alwaysMissing(EaterInRequest at) {
        return at.wishes().always().stream()
                .map(always -> always.measure().food())
                .filter(food -> request.kitchen().packsOf(food).isEmpty()
                        && request.lastingGrams(food).signum() == 0)
                .findFirst()
                .map(food -> {
                    boolean spoils = request.kitchen().pantryGrams(food).signum() > 0;
                    return cause(
                            at,
                            spoils ? "use by" : "stock",
                            at.name() + " always eats " + food.name() + ", which is "
                                    + (spoils
                                            ? "not sold, and what is at home spoils before the last day"
                                            : "neither at home nor sold"),
                            List.of(),
                            new Remedy.SellPacks(Optional.of(food)));
                });
    }

    /** Where an avoided dish could be had, that is left to the search. */
    private Optional<Cause> nothingToBuy(EaterInRequest at) {
        List<Dish> allowed = Offered.allowed(at, request);
        List<Food> missing = allowed.stream()
                .flatMap(d -> Offered.missing(d, request.kitchen()).stream())
                .distinct()
                .toList();
        return when(
                !allowed.isEmpty()
                        && request.kitchen().dishes().values().stream()
                                .noneMatch(dish ->
                                        Offered.missing(dish, request.kitchen()).isEmpty()),
                () -> cause(
                        at,
                        "stock",
                        "every dish that " + at.name() + " may eat needs a food that is neither at home nor sold: "
                                + Phrases.some(missing.stream().map(Food::name).toList()),
                        List.of(),
                        new Remedy.SellPacks(Optional.empty())));
    }

    /** Dishes that are avoided are left to the search: it knows which to allow again. */
    private Optional<Cause> tooFewDishes(EaterInRequest at) {
        int offered = Offered.to(at, request).size();
        int needed = (at.wishes().containersADay() + A_DAY - 1) / A_DAY;
        boolean avoided = offered < request.kitchen().dishes().size() && avoids(at);
        return when(
                offered < needed && !avoided,
                () -> cause(
                        at,
                        RULE,
                        at.name() + " gets exactly " + containers(at) + " a day, of one dish at most " + A_DAY
                                + ": that takes " + Phrases.count(needed, "dish", "dishes") + ", and " + offered
                                + " can be served",
                        offered == 0 ? List.of() : List.of(SoftWishes.containers(at, offered * A_DAY)),
                        new Remedy.OfferAnotherDish()));
    }

    private static boolean avoids(EaterInRequest at) {
        return !at.wishes().avoided().isNothing();
    }

    /** One eater, one day, an odd number of containers: a dish fills two, so the last one would be a batch of one. */
    private Optional<Cause> oneDay(EaterInRequest at) {
        int now = at.wishes().containersADay();
        return when(
                request.seats().size() == 1 && request.days() == 1 && now % A_DAY == 1,
                () -> cause(
                        at,
                        RULE,
                        "on a single day " + at.name() + " gets " + containers(at) + ", of one dish at most " + A_DAY
                                + "; that leaves a dish with 1 container, and a batch fills at least "
                                + PlanRequest.LEAST_CONTAINERS_OF_A_DISH,
                        now == 1
                                ? List.of(TWO_DAYS, SoftWishes.containers(at, now + 1))
                                : List.of(
                                        TWO_DAYS,
                                        SoftWishes.containers(at, now + 1),
                                        SoftWishes.containers(at, now - 1)),
                        new Remedy.PlanDays(2)));
    }

    private static Optional<Cause> when(boolean holds, Supplier<Cause> cause) {
        return holds ? Optional.of(cause.get()) : Optional.empty();
    }

    private static Cause cause(
            EaterInRequest at, String rule, String says, List<Loosening> oneAfterAnother, Remedy otherwise) {
        var softRule = SoftRule.ofOtherFigures(
                rule, says, oneAfterAnother.stream().map(List::of).toList());
        return new Cause(at, softRule, otherwise);
    }

    private static String containers(EaterInRequest at) {
        return Phrases.count(at.wishes().containersADay(), "container", "containers");
    }
}
