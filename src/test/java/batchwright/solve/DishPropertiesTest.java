package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Food;
import batchwright.food.Kitchen;
import batchwright.food.Measure;
import batchwright.food.Pack;
import batchwright.plan.DishRequest;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import batchwright.solve.dish.DishSolver;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must happen to the containers of one dish when a request changes in one thing, on random requests. */
class DishPropertiesTest {
    private static final long FIRST_SEED = 20_000;
    private static final long SEEDS = 100;

    static LongStream seeds() {
        return LongStream.range(FIRST_SEED, FIRST_SEED + SEEDS);
    }

    private static DishRequest free(long seed) {
        return RandomDishes.of(seed).withBudget(Optional.empty());
    }

    private static Optional<Plan> plan(DishRequest request) {
        return new DishSolver().fill(request).plan();
    }

    private static long cost(DishRequest request) {
        return plan(request).map(p -> p.cost().minor()).orElse(Long.MAX_VALUE);
    }

    private static DishRequest kitchen(DishRequest r, UnaryOperator<PlanRequest> change) {
        var nobody = new PlanRequest(r.kitchen(), List.of(), 1, Optional.empty(), 1, r.patience());
        Kitchen changed = change.apply(nobody).kitchen();
        return new DishRequest(changed, r.dish(), r.containers(), r.wish(), r.pantry(), r.budget(), r.patience());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void prices_times_ten_give_the_same_containers_for_ten_times_the_money(long seed) {
        DishRequest request = free(seed);
        Optional<Plan> tenfold = plan(kitchen(request, k -> Variants.pricesTimes(k, 10)));

        assertThat(tenfold.map(Plan::batches)).isEqualTo(plan(request).map(Plan::batches));
        assertThat(tenfold.map(p -> p.cost().minor()))
                .isEqualTo(plan(request).map(p -> p.cost().minor() * 10));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_budget_of_just_the_cost_is_enough_and_a_cent_less_is_not(long seed) {
        DishRequest request = free(seed);
        plan(request).ifPresent(plan -> {
            long cost = plan.cost().minor();
            assertThat(plan(request.withBudget(Optional.of(new Money(cost)))).map(Plan::batches))
                    .contains(plan.batches());
            assertThat(cost(request.withBudget(Optional.of(new Money(cost + 500)))))
                    .isEqualTo(cost);
            if (cost > 0) {
                assertThat(plan(request.withBudget(Optional.of(new Money(cost - 1)))))
                        .isEmpty();
            }
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_food_that_the_dish_does_not_hold_changes_nothing(long seed) {
        DishRequest request = free(seed);
        Food like = request.kitchen().foods().values().iterator().next();
        var food = new Food(
                "one_more",
                "one more",
                like.group(),
                like.ndb(),
                like.description(),
                like.per100g(),
                like.refusePercent(),
                like.allergens(),
                like.perishable());
        var pack = new Pack(
                food, "shop", "175 g", BigDecimal.valueOf(175), new Money(1), LocalDate.of(2026, 1, 5), "invented");
        var measure = new Measure(food, "piece", BigDecimal.TEN, 1, "invented");

        Optional<Plan> more = plan(kitchen(request, k -> Variants.anotherFood(k, pack, measure)));

        assertThat(more.map(Plan::batches)).isEqualTo(plan(request).map(Plan::batches));
        assertThat(more.map(Plan::shopping)).isEqualTo(plan(request).map(Plan::shopping));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void with_all_foods_at_home_there_is_nothing_to_buy(long seed) {
        DishRequest asked = free(seed);
        DishRequest request = new DishRequest(
                asked.kitchen(),
                asked.dish(),
                asked.containers(),
                asked.wish(),
                true,
                Optional.of(Money.ZERO),
                asked.patience());
        for (Food food : request.dish().foods()) {
            request = kitchen(request, k -> Variants.pantry(k, food, 100_000));
        }
        boolean possible = plan(asked).isPresent();

        Optional<Plan> plan = plan(request);

        assertThat(plan.isPresent() || !possible).isTrue();
        plan.ifPresent(
                p -> assertThat(p.shopping()).allMatch(line -> line.packs().isEmpty()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void one_container_more_or_the_pantry_left_alone_never_costs_less(long seed) {
        DishRequest request = free(seed);
        DishRequest noPantry = new DishRequest(
                request.kitchen(),
                request.dish(),
                request.containers(),
                request.wish(),
                false,
                Optional.empty(),
                request.patience());

        assertThat(cost(request.withContainers(request.containers() + 1))).isGreaterThanOrEqualTo(cost(request));
        assertThat(cost(noPantry)).isGreaterThanOrEqualTo(cost(request));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void another_order_of_foods_and_packs_costs_the_same(long seed) {
        DishRequest request = free(seed);

        assertThat(cost(kitchen(request, k -> Variants.shuffled(k, seed)))).isEqualTo(cost(request));
    }
}
