package batchwright.app.proof;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.proof.PlanProof;
import batchwright.audit.proof.ProofCheck;
import batchwright.food.Shops;
import batchwright.plan.PlanRequest;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import batchwright.solve.BruteForce;
import batchwright.solve.MealVariants;
import batchwright.solve.RandomProblems;
import batchwright.solve.RandomShop;
import batchwright.solve.SwapVariants;
import batchwright.solve.mip.Stop;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is proven and checked of small random requests is never more than what plain enumeration finds, or than what a plan costs, although
 * the goal is far above it; and it is often just that.
 */
class ProofBruteForceTest {
    /** -Dbatchwright.seeds=1000 looks at more. */
    private static final long SEEDS = Long.getLong("batchwright.seeds", 30);

    static LongStream seeds() {
        return LongStream.range(220_000, 220_000 + SEEDS);
    }

    /** Of as much as can be proven, at most a great deal. */
    private static long proven(PlanRequest request) {
        PlanProof proof = ProveTotals.of(request, 1_000_000, Stop.NEVER);
        ProofCheck.Verdict verdict = ProofCheck.of(request, proof);
        assertThat(verdict.wrong()).isEmpty();
        assertThat(verdict.boundMinor()).isEqualTo(proof.boundMinor());
        return verdict.boundMinor();
    }

    private static OptionalLong least(PlanRequest request) {
        return BruteForce.leastCost(request.withBudget(Optional.empty()));
    }

    private static void staysBelow(PlanRequest request, OptionalLong least) {
        long proven = proven(request);
        least.ifPresent(minor -> assertThat(proven).isLessThanOrEqualTo(minor));
    }

    private static void staysBelowAPlan(PlanRequest request) {
        long proven = proven(request);
        new BatchPlanner()
                .plan(request.withBudget(Optional.empty()))
                .best()
                .ifPresent(plan ->
                        assertThat(proven).isLessThanOrEqualTo(plan.cost().minor()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_more_than_enumeration_finds(long seed) {
        PlanRequest request = RandomProblems.of(seed);
        staysBelow(request, least(request));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_more_with_loose_goods_dates_and_room_to_spare(long seed) {
        PlanRequest shop = RandomShop.of(seed, RandomProblems.of(seed));
        PlanRequest request =
                shop.withKitchen(shop.kitchen().with(shop.kitchen().shops().withReserve(BigDecimal.valueOf(seed % 2))));
        staysBelow(request, least(request));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_more_with_swaps(long seed) {
        PlanRequest request = SwapVariants.of(RandomProblems.of(seed), seed);
        staysBelow(request, SwapVariants.leastCost(request.withBudget(Optional.empty())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void no_more_than_a_plan_with_meals_and_trips(long seed) {
        PlanRequest meals = MealVariants.of(RandomProblems.of(seed), seed);
        staysBelowAPlan(meals.withKitchen(meals.kitchen().with(Shops.FREE.withTrip(new Money(1 + seed % 300)))));
    }

    /** A proof of nothing would never be too high. */
    @Test
    void often_just_what_enumeration_finds() {
        long just = seeds().mapToObj(RandomProblems::of)
                .filter(request -> least(request).equals(OptionalLong.of(proven(request))))
                .count();
        long planned = seeds().mapToObj(RandomProblems::of)
                .filter(request -> least(request).isPresent())
                .count();

        assertThat(just).isGreaterThan(planned / 2);
    }

    /** Where nothing can be cooked, anything can be proven; the goal is. */
    @Test
    void where_there_is_no_plan_the_goal_is_often_proven() {
        long goal = seeds().mapToObj(RandomProblems::of)
                .filter(request -> least(request).isEmpty())
                .filter(request -> proven(request) == 1_000_000)
                .count();

        assertThat(goal).isPositive();
    }

    /** Time that is over makes it prove less, not wrongly. */
    @Test
    void a_proof_that_is_cut_short_holds() {
        long[] proven = new long[3];
        for (int k = 0; k < proven.length; k++) {
            long most = 1L << (2 * k);
            var asked = new long[1];
            PlanRequest request = RandomProblems.of(220_003);
            PlanProof proof = ProveTotals.of(request, 1_000_000, () -> asked[0]++ >= most);

            assertThat(ProofCheck.of(request, proof).wrong()).isEmpty();
            proven[k] = proof.boundMinor();
        }

        assertThat(proven).isSorted();
    }
}
