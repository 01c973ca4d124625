package batchwright.solve.whole;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.food.Shops;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import batchwright.solve.RandomProblems;
import batchwright.solve.RandomShop;
import batchwright.solve.SwapVariants;
import batchwright.solve.mip.MipModel;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Without any other solver: a plan of ours is a point of the model, keeps each of its rows, and costs what the model says. */
class WholeModelTest {
    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "desk-cutting", "parent-holding"})
    void a_starter_plan_keeps_every_row(String eater) {
        keepsEveryRow(StarterRequests.withAllDishes(eater, 3));
    }

    static LongStream seeds() {
        return LongStream.range(0, 30);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_random_plan_keeps_every_row(long seed) {
        keepsEveryRow(RandomProblems.of(seed));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_random_plan_in_which_foods_may_be_swapped_keeps_every_row(long seed) {
        keepsEveryRow(SwapVariants.of(RandomProblems.of(90_000 + seed), 90_000 + seed));
    }

    /** Loose goods too, which are not bought together with packs of the same food. */
    @ParameterizedTest
    @MethodSource("seeds")
    void a_random_plan_with_trips_that_cost_and_room_to_spare_keeps_every_row(long seed) {
        PlanRequest request = RandomShop.of(seed, RandomProblems.of(seed));
        var shops = new Shops(new Money(120), Map.of(), BigDecimal.valueOf(seed % 3, 1));
        keepsEveryRow(request.withKitchen(request.kitchen().with(shops)));
    }

    /** All but the order of days: of all orders the model has one only, and ours need not be that one. */
    private static void keepsEveryRow(PlanRequest request) {
        Optional<Plan> plan = new BatchPlanner()
                .plan(request.withPatience(Duration.ofSeconds(60)))
                .best();
        if (plan.isEmpty()) {
            return;
        }
        MipModel model = WholeModel.of(request).model();
        double[] x = PlanInModel.values(plan.get(), request.kitchen().packs(), model);

        assertThat(model.brokenBy(x, 1e-6, name -> name.startsWith("order."))).isEmpty();
        assertThat(model.costOf(x)).isEqualTo((double) plan.get().cost().minor());
    }

    @Test
    void every_code_of_the_text_has_its_line_in_the_table() {
        WholeModel whole = WholeModel.of(RandomProblems.of(1));
        List<String> codes = whole.names()
                .lines()
                .skip(1)
                .map(line -> line.substring(0, line.indexOf(',')))
                .toList();

        assertThat(codes)
                .hasSize(1 + whole.model().columns().size() + whole.model().rowCount());
        assertThat(whole.mps()).contains(codes);
    }

    @Test
    void a_line_of_the_table_says_what_the_code_is() {
        assertThat(WholeModel.of(StarterRequests.withAllDishes("lifter-gaining", 2))
                        .names())
                .startsWith("code,kind,name,meaning,unit\n")
                .contains(",column,steps.pasta.tuna_bean_pasta.lifter-gaining,")
                .containsPattern("R\\d{7},row,energy\\.lifter-gaining\\.day2,energy band of the day,kcal\n");
    }
}
