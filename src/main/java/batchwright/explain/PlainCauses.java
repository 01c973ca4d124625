package batchwright.explain;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Why there is no plan, where counting alone shows it: no search finds a better sentence. */
final class PlainCauses {
    private static final int A_DAY = PlanRequest.MOST_OF_A_DISH_A_DAY;
    private static final String RULE = "containers a day";

    private final PlanRequest request;
    private final Oracle oracle;

    PlainCauses(PlanRequest request, Oracle oracle) {
        this.request = request;
        this.oracle = oracle;
    }

    Optional<Clash> first() {
        List<Function<AtTable, Optional<Clash>>> causes =
                List.of(this::nothingToCook, this::alwaysMissing, this::nothingToBuy, this::tooFewDishes, this::oneDay);
        return AtTable.all(request).stream()
                .flatMap(at -> causes.stream().map(cause -> cause.apply(at)).flatMap(Optional::stream))
                .findFirst();
    }

    private Optional<Clash> nothingToCook(AtTable at) {
        return when(
                request.kitchen().dishes().isEmpty(),
                () -> new Clash(
                        RULE,
                        at.name() + " gets exactly " + containers(at) + " a day, and there is no dish to fill them",
                        "",
                        "dishes in foods/dishes; the command init writes starter dishes"));
    }

    private Optional<Clash> alwaysMissing(AtTable at) {
        return at.wishes().always().stream()
                .map(always -> always.measure().food())
                .filter(food -> request.kitchen().packsOf(food).isEmpty()
                        && request.lastingGrams(food).signum() == 0)
                .findFirst()
                .map(food -> {
                    boolean spoils = request.kitchen().pantryGrams(food).signum() > 0;
                    return new Clash(
                            spoils ? "use by" : "stock",
                            at.name() + " always eats " + food.name() + ", which is "
                                    + (spoils
                                            ? "not sold, and what is at home spoils before the last day"
                                            : "neither at home nor sold"),
                            "",
                            "a pack of " + food.id() + " in foods/shop.csv");
                });
    }

    private Optional<Clash> nothingToBuy(AtTable at) {
        List<Dish> allowed = Offered.allowed(at, request);
        List<Food> missing = allowed.stream()
                .flatMap(d -> Offered.missing(d, request.kitchen()).stream())
                .distinct()
                .toList();
        return when(
                !allowed.isEmpty() && Offered.to(at, request).isEmpty(),
                () -> new Clash(
                        "stock",
                        "every dish that " + at.name() + " may eat needs a food that is neither at home nor sold: "
                                + Say.some(missing.stream().map(Food::name).toList()),
                        "",
                        "packs in foods/shop.csv"));
    }

    /** Dishes that are avoided are left to the search: it knows which to allow again. */
    private Optional<Clash> tooFewDishes(AtTable at) {
        int offered = Offered.to(at, request).size();
        int needed = (at.wishes().containersADay() + A_DAY - 1) / A_DAY;
        boolean avoided = offered < request.kitchen().dishes().size() && avoids(at);
        return when(offered < needed && !avoided, () -> {
            Optional<Other> other = firstPossible(Stream.of(containersADay(at, offered * A_DAY)));
            return new Clash(
                    RULE,
                    at.name() + " gets exactly " + containers(at) + " a day, of one dish at most " + A_DAY
                            + ": that takes " + Say.count(needed, "dish", "dishes") + ", and " + offered
                            + " can be served",
                    other.map(Other::cure).orElse(""),
                    other.map(Other::tryThis)
                            .orElse("another dish, in --cook if you named some there, else in foods/dishes"));
        });
    }

    private static boolean avoids(AtTable at) {
        return !(at.wishes().avoidFoods().isEmpty()
                && at.wishes().avoidAllergens().isEmpty()
                && at.wishes().avoidDishes().isEmpty());
    }

    /** One eater, one day, an odd number of containers: a dish fills two, so the last one would be a batch of one. */
    private Optional<Clash> oneDay(AtTable at) {
        int now = at.wishes().containersADay();
        return when(request.seats().size() == 1 && request.days() == 1 && now % A_DAY == 1, () -> {
            Optional<Other> other =
                    firstPossible(Stream.of(days(2), containersADay(at, now + 1), containersADay(at, now - 1)));
            return new Clash(
                    RULE,
                    "on a single day " + at.name() + " gets " + containers(at) + ", of one dish at most " + A_DAY
                            + "; that leaves a dish with 1 container, and a batch fills at least "
                            + PlanRequest.LEAST_CONTAINERS_OF_A_DISH,
                    other.map(Other::cure).orElse(""),
                    other.map(Other::tryThis).orElse("--days 2"));
        });
    }

    private static Optional<Clash> when(boolean holds, Supplier<Clash> clash) {
        return holds ? Optional.of(clash.get()) : Optional.empty();
    }

    private static String containers(AtTable at) {
        return Say.count(at.wishes().containersADay(), "container", "containers");
    }

    private record Other(PlanRequest request, String cure, String tryThis) {}

    private Optional<Other> firstPossible(Stream<Other> others) {
        return others.filter(o -> o.request().seats().stream()
                        .allMatch(s -> s.eater().wishes().containersADay() > 0))
                .filter(o -> oracle.ask(o.request()) == Possible.YES)
                .findFirst();
    }

    private Other days(int other) {
        return new Other(request.withDays(other), "plan " + other + " days", "--days " + other);
    }

    private Other containersADay(AtTable at, int other) {
        return new Other(
                at.withWishes(request, w -> w.withContainersADay(other)),
                "ask for " + other + " a day",
                "containers_a_day: " + other + " in " + at.file());
    }
}
