package batchwright.explain.cost;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.explain.CostOracle;
import batchwright.explain.EaterInRequest;
import batchwright.explain.KnownCost;
import batchwright.food.Nutrient;
import batchwright.food.Pack;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.TradeOff;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import batchwright.solve.BruteForce;
import batchwright.solve.RandomProblems;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Why a plan costs what it costs, on random requests: every figure is what plain enumeration of the changed request finds. */
class RandomCostsTest {
    /** -Dbatchwright.costs=200 looks at more. */
    private static final long REQUESTS = Long.getLong("batchwright.costs", 25);

    private static final long FIRST_SEED = 20_000;

    static LongStream seeds() {
        return LongStream.iterate(FIRST_SEED, seed -> seed + 1)
                .filter(seed -> BruteForce.leastCost(request(seed)).isPresent())
                .limit(REQUESTS);
    }

    private static PlanRequest request(long seed) {
        return RandomProblems.of(seed).withBudget(Optional.empty()).withPatience(Duration.ofMinutes(5));
    }

    private static Plan plan(PlanRequest request) {
        return ((PlanResult.Planned) new BatchPlanner().plan(request)).plan();
    }

    private static void same(KnownCost cost, PlanRequest changed) {
        OptionalLong least = BruteForce.leastCost(changed);
        assertThat(cost.proven()).isTrue();
        assertThat(cost.noPlan()).isEqualTo(least.isEmpty());
        least.ifPresent(minor -> assertThat(cost.most()).contains(new Money(minor)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void each_rule_costs_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        List<RuleCost> costs =
                new WhyFinder(new BatchPlanner()).why(request, plan(request)).rules();

        List<RulePerturbation> touched = RulePerturbations.of(request);
        assertThat(costs)
                .extracting(RuleCost::rule)
                .isEqualTo(touched.stream().map(RulePerturbation::rule).toList());
        for (int i = 0; i < costs.size(); i++) {
            RuleCost cost = costs.get(i);
            touched.get(i)
                    .looser()
                    .ifPresent(c ->
                            same(cost.looser().orElseThrow().cost(), c.made().apply(request)));
            touched.get(i)
                    .tighter()
                    .ifPresent(c ->
                            same(cost.tighter().orElseThrow().cost(), c.made().apply(request)));
        }
    }

    /** A loosened rule is never dearer, a tightened one never cheaper. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void loosened_is_never_dearer_and_tightened_never_cheaper(long seed) {
        PlanRequest request = request(seed);
        long cost = plan(request).cost().minor();

        for (RulePerturbation rule : RulePerturbations.of(request)) {
            rule.looser()
                    .ifPresent(
                            c -> assertThat(plan(c.made().apply(request)).cost().minor())
                                    .as(rule.rule())
                                    .isLessThanOrEqualTo(cost));
            rule.tighter()
                    .map(c -> new BatchPlanner().plan(c.made().apply(request)))
                    .filter(PlanResult.Planned.class::isInstance)
                    .ifPresent(r -> assertThat(
                                    ((PlanResult.Planned) r).plan().cost().minor())
                            .as(rule.rule())
                            .isGreaterThanOrEqualTo(cost));
        }
    }

    /** At the price a plan without the food is dearer; at a cent more it is not. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_food_that_missed_enters_at_its_price_and_not_at_a_cent_more(long seed) {
        PlanRequest request = request(seed);
        Plan plan = plan(request);

        for (NearMiss miss :
                new WhyFinder(new BatchPlanner()).why(request, plan).misses()) {
            assertThat(miss.proven()).isTrue();
            assertThat(leastCost(request, miss.pack(), miss.entersAt().minor()))
                    .isLessThan(plan.cost().minor());
            assertThat(leastCost(request, miss.pack(), miss.entersAt().minor() + 1))
                    .isEqualTo(plan.cost().minor());
        }
    }

    private static long leastCost(PlanRequest request, Pack pack, long minor) {
        Optional<Money> price = Optional.of(new Money(minor));
        return BruteForce.leastCost(Repriced.of(request, p -> p.equals(pack) ? price : Optional.empty())
                        .request())
                .orElseThrow();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_frontier_of_protein_costs_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        Frontier frontier = frontier(request, TradeOff.PROTEIN);

        assertThat(frontier.points())
                .hasSizeBetween(1, Frontier.MOST_POINTS)
                .filteredOn(Frontier.Point::inForce)
                .hasSize(1);
        for (Frontier.Point point : frontier.points()) {
            same(point.cost(), moreProtein(request, point.change()));
            point.reach()
                    .ifPresent(reach -> reaches(request, reach, point.cost().least()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_frontier_of_budgets_buys_what_enumeration_finds(long seed) {
        PlanRequest request = request(seed);

        Frontier frontier = frontier(request, TradeOff.BUDGET);

        assertThat(frontier.points())
                .hasSizeBetween(1, Frontier.MOST_POINTS)
                .filteredOn(Frontier.Point::inForce)
                .hasSize(1);
        for (Frontier.Point point : frontier.points()) {
            reaches(request, point.reach().orElseThrow(), point.cost().least());
        }
    }

    private static void reaches(PlanRequest request, ProteinReach reach, Money money) {
        assertThat(reach.proven()).isTrue();
        reach.atLeast().ifPresent(most -> {
            assertThat(within(moreProtein(request, most), money)).isTrue();
            if (!reach.highest()) {
                assertThat(within(moreProtein(request, most + 1), money)).isFalse();
            }
        });
        if (reach.atLeast().isEmpty()) {
            int lowest =
                    new ProteinStairs(request, new CostOracle(new BatchPlanner(), () -> 0, Duration.ZERO)).lowest();
            assertThat(within(moreProtein(request, lowest), money)).isFalse();
        }
    }

    private static boolean within(PlanRequest request, Money money) {
        OptionalLong least = BruteForce.leastCost(request);
        return least.isPresent() && least.getAsLong() <= money.minor();
    }

    private static PlanRequest moreProtein(PlanRequest request, int change) {
        PlanRequest changed = request;
        for (EaterInRequest at : EaterInRequest.all(request)) {
            changed = at.withTarget(
                    changed,
                    t -> t.with(
                            Scope.DAY,
                            Nutrient.PROTEIN,
                            Range.atLeast(Math.max(0, t.day(Nutrient.PROTEIN).least() + change))));
        }
        return changed;
    }

    private static Frontier frontier(PlanRequest request, TradeOff against) {
        return new FrontierFinder(new BatchPlanner(), request, Optional.of(plan(request)))
                .find(against, kcal -> Optional.empty());
    }
}
