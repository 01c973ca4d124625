package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.food.Food;
import batchwright.food.Pack;
import batchwright.plan.Batch;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Purchase;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Packs that were bought for nothing are found: the audit, which works it out by itself, misses none and none too many. */
class SparePacksTest {
    private static Plan shopping(Plan plan, UnaryOperator<Purchase> change) {
        List<Purchase> shopping = plan.shopping().stream().map(change).toList();
        return Plan.of(plan.first().withShopping(shopping));
    }

    private static Purchase withPacks(Purchase line, Map<Pack, Integer> packs) {
        return new Purchase(line.food(), packs, line.usedGrams(), line.fromPantryGrams());
    }

    private static Map<Pack, Integer> twoMoreOfEach(PlanRequest request, Food food, Map<Pack, Integer> packs) {
        Map<Pack, Integer> more = new LinkedHashMap<>(packs);
        request.kitchen().packsOf(food).forEach(pack -> more.merge(pack, 2, Integer::sum));
        return more;
    }

    private static BigDecimal inBatches(Plan plan, Food food) {
        return plan.batches().stream()
                .map(Batch::ingredients)
                .map(grams -> grams.getOrDefault(food, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(food.edibleShare(), MathContext.DECIMAL64);
    }

    private static List<String> stock(PlanRequest request, Plan plan) {
        return Audit.of(request, plan).checks().stream()
                .filter(check -> check.rule().equals("stock") && !check.passed())
                .map(check -> check.detail())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void two_packs_too_many_of_each_kind_are_left_out(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        if (!(new BatchPlanner().plan(request) instanceof PlanResult.Planned planned)) {
            return;
        }
        Plan plan = planned.plan();
        Plan wasteful = shopping(plan, line -> withPacks(line, twoMoreOfEach(request, line.food(), line.packs())));

        Plan tidy = shopping(
                wasteful,
                line -> withPacks(
                        line,
                        new SparePacks(request, line.food(), line.usedGrams(), inBatches(plan, line.food()))
                                .leftOut(line.packs())));

        assertThat(stock(request, wasteful)).isNotEmpty();
        assertThat(stock(request, tidy)).isEmpty();
    }
}
