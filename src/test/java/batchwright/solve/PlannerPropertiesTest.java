package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Dish;
import batchwright.food.Food;
import batchwright.food.Measure;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.limit.DayTarget;
import batchwright.limit.Limit;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.plan.Day;
import batchwright.plan.EaterDays;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.Proof;
import batchwright.plan.Seat;
import batchwright.quantity.Money;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must happen to the least cost when a request changes in one thing, on random requests. */
class PlannerPropertiesTest {
    private static final long FIRST_SEED = 10_000;
    private static final long SEEDS = 60;
    private static final long NO_PLAN = Long.MAX_VALUE;

    static LongStream seeds() {
        return LongStream.range(FIRST_SEED, FIRST_SEED + SEEDS);
    }

    /** Those that once were answered "no plan" with just enough money come first. */
    static LongStream tightSeeds() {
        return LongStream.concat(LongStream.of(782, 1128, 1183, 2033, 2483), seeds());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("tightSeeds")
    void a_budget_of_just_the_cost_is_enough_and_a_cent_less_is_not(long seed) {
        PlanRequest free = RandomProblems.of(seed).withBudget(Optional.empty());
        long cost = cost(free);

        if (cost != NO_PLAN) {
            assertThat(cost(Variants.withBudget(free, cost))).isEqualTo(cost);
            assertThat(cost(Variants.withBudget(free, cost + 100))).isEqualTo(cost);
            if (cost > 0) {
                assertThat(cost(Variants.withBudget(free, cost - 1))).isEqualTo(NO_PLAN);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void more_at_home_never_costs_more(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        long cost = cost(request);

        for (Food food : request.kitchen().foods().values()) {
            assertThat(cost(Variants.pantry(request, food, 150))).isLessThanOrEqualTo(cost);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void one_more_pack_never_costs_more(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        long cost = cost(request);

        for (Food food : request.kitchen().foods().values()) {
            assertThat(cost(Variants.anotherPack(request, pack(food, 175, 90)))).isLessThanOrEqualTo(cost);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void one_more_dish_never_costs_more(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Dish like = request.kitchen().dishes().values().iterator().next();
        Dish keeps = new Dish(
                "one_more",
                "one more",
                like.kind(),
                like.fridgeDays(),
                !like.freezes(),
                like.reheat(),
                like.parts(),
                like.staples(),
                like.steps());

        assertThat(cost(Variants.anotherDish(request, keeps))).isLessThanOrEqualTo(cost(request));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void one_more_food_on_offer_never_costs_more(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Food food = anotherFood(request, "one_more");
        var measure = new Measure(food, "piece", BigDecimal.valueOf(50), 2, "invented");

        assertThat(cost(Variants.anotherFood(request, pack(food, 100, 30), measure)))
                .isLessThanOrEqualTo(cost(request));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void asking_for_less_never_costs_more(long seed) {
        PlanRequest request = RandomProblems.of(seed);

        assertThat(cost(Variants.targets(request, PlannerPropertiesTest::easier)))
                .isLessThanOrEqualTo(cost(request));
    }

    /** Lower floors and wider bands. */
    private static DayTarget easier(DayTarget target) {
        DayTarget easier = target;
        for (Limit limit : target.limits()) {
            Range range = limit.range();
            int least = limit.scope() == Scope.DAY && limit.measured() == Nutrient.ENERGY
                    ? range.least() - 20
                    : range.least() * 9 / 10;
            OptionalInt most =
                    range.most().isPresent() ? OptionalInt.of(range.most().getAsInt() + 3) : range.most();
            easier = easier.with(limit, new Range(least, most));
        }
        return easier;
    }

    /** Which of several equally cheap plans is shown may differ: ties are settled only near the plan that was found. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void ten_times_the_prices_cost_ten_times_as_much(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Optional<Plan> plan = new BatchPlanner().plan(request).best();
        Optional<Plan> dear =
                new BatchPlanner().plan(Variants.pricesTimes(request, 10)).best();

        assertThat(dear.map(p -> p.cost().minor()))
                .isEqualTo(plan.map(p -> p.cost().minor() * 10));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_order_of_the_files_does_not_change_the_cost(long seed) {
        PlanRequest request = RandomProblems.of(seed);

        assertThat(cost(Variants.shuffled(request, seed))).isEqualTo(cost(request));
    }

    /** The same pack, in another shop, on a second line (in one shop the files refuse it); and what is at home on two lines of the pantry's. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_line_split_in_two_does_not_change_the_cost(long seed) {
        PlanRequest request = RandomShop.of(seed);
        long cost = cost(request);

        for (List<Pack> sold : request.kitchen().packs().values()) {
            for (Pack pack : sold) {
                assertThat(cost(Variants.anotherPack(request, elsewhere(pack)))).isEqualTo(cost);
            }
        }
        assertThat(cost(Variants.pantryInHalves(request))).isEqualTo(cost);
    }

    private static Food anotherFood(PlanRequest request, String id) {
        Food like = request.kitchen().foods().values().iterator().next();
        return new Food(
                id,
                id,
                like.group(),
                Optional.empty(),
                "invented",
                like.per100g(),
                BigDecimal.TEN,
                like.allergens(),
                true);
    }

    private static Pack elsewhere(Pack p) {
        return new Pack(p.food(), "another shop", p.label(), p.contents(), p.price(), p.loose(), p.seen(), "invented");
    }

    /** In the catalogue but in no shop, at no home and in no dish; then in the shop, too, as no snack. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_food_that_nobody_uses_does_not_change_the_cost(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Food unused = anotherFood(request, "unused");
        var noSnack = new Measure(unused, "piece", BigDecimal.valueOf(50), 0, "invented");
        long cost = cost(request);

        PlanRequest sold = Variants.anotherFood(request, pack(unused, 100, 30), noSnack);

        assertThat(cost(sold)).isEqualTo(cost);
        assertThat(cost(Variants.packs(sold, packs -> {
                    packs.remove(unused);
                    return packs;
                })))
                .isEqualTo(cost);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void the_same_request_gives_the_same_plan(long seed) {
        Optional<Plan> once = new BatchPlanner().plan(RandomProblems.of(seed)).best();
        Optional<Plan> again = new BatchPlanner().plan(RandomProblems.of(seed)).best();

        assertThat(again.map(PlannerPropertiesTest::unclocked)).isEqualTo(once.map(PlannerPropertiesTest::unclocked));
        assertThat(again.map(p -> unclocked(p).toString()))
                .isEqualTo(once.map(p -> unclocked(p).toString()));
    }

    private static Plan unclocked(Plan plan) {
        Proof proof = plan.proof();
        return Plan.of(
                plan.first().withProof(new Proof(proof.cost(), proof.lowerBound(), proof.nodes(), Duration.ZERO)));
    }

    /**
     * A plan without its last day is a plan for a day less, if each dish it still holds fills two containers; so a day less
     * then costs no more. Without that condition it may: a batch of one is not allowed.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_day_less_never_costs_more_where_batches_stay_batches(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Optional<Plan> plan = new BatchPlanner().plan(request).best();

        if (request.days() > 1 && plan.isPresent() && staysBatches(plan.get(), seat -> true, request.days() - 1)) {
            assertThat(cost(Variants.days(request, request.days() - 1)))
                    .isLessThanOrEqualTo(plan.get().cost().minor());
        }
    }

    /** The same for the eaters: those who remain have a plan, if each dish they still eat fills two containers. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void an_eater_less_never_costs_more_where_batches_stay_batches(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        Optional<Plan> plan = new BatchPlanner().plan(request).best();
        Seat first = request.seats().get(0);

        if (request.seats().size() > 1
                && plan.isPresent()
                && staysBatches(plan.get(), seat -> seat.equals(first), request.days())) {
            assertThat(cost(Variants.seats(request, List.of(first))))
                    .isLessThanOrEqualTo(plan.get().cost().minor());
        }
    }

    private static boolean staysBatches(Plan plan, Predicate<Seat> stays, int days) {
        Map<Dish, Integer> containers = new HashMap<>();
        for (EaterDays eater : plan.eaters()) {
            if (stays.test(eater.seat())) {
                for (Day day : eater.days().subList(0, days)) {
                    day.servings().forEach(s -> containers.merge(s.dish(), s.count(), Integer::sum));
                }
            }
        }
        return containers.values().stream().allMatch(count -> count >= PlanRequest.LEAST_CONTAINERS_OF_A_DISH);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void to_cook_a_day_later_never_costs_less_and_without_dates_never_more(long seed) {
        PlanRequest request = RandomShop.of(seed);
        long cost = cost(request);

        assertThat(cost(Variants.cookingDay(request, 1))).isGreaterThanOrEqualTo(cost);
        assertThat(cost(Variants.withoutDates(request))).isLessThanOrEqualTo(cost);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_food_sold_loose_too_never_costs_more(long seed) {
        PlanRequest request = RandomShop.of(seed);
        long cost = cost(request);

        for (Food food : request.kitchen().foods().values()) {
            Pack loose = pack(food, 1000, 430).looseBy(BigDecimal.valueOf(45));
            assertThat(cost(Variants.anotherPack(request, loose))).isLessThanOrEqualTo(cost);
        }
    }

    /** The conditions above must not hide everything. */
    @Test
    void half_of_the_requests_have_a_plan() {
        long planned = seeds().mapToObj(RandomProblems::of)
                .map(BruteForce::leastCost)
                .filter(OptionalLong::isPresent)
                .count();

        assertThat(planned).isGreaterThanOrEqualTo(SEEDS / 2);
    }

    private static long cost(PlanRequest request) {
        var result = new BatchPlanner().plan(request);
        assertThat(Outcome.of(result)).isNotEqualTo("not proven");
        return result.best().map(plan -> plan.cost().minor()).orElse(NO_PLAN);
    }

    private static Pack pack(Food food, int grams, long minor) {
        return new Pack(
                food,
                "another shop",
                grams + " g",
                BigDecimal.valueOf(grams),
                new Money(minor),
                LocalDate.of(2026, 1, 5),
                "invented");
    }
}
