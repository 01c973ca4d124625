package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.explain.Oracle.WorkLimits;
import batchwright.plan.Clash;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.plan.Proof;
import batchwright.quantity.Currency;
import batchwright.quantity.Money;
import batchwright.solve.BatchPlanner;
import batchwright.solve.RandomProblems;
import batchwright.solve.whole.OutsideSolver;
import batchwright.solve.whole.WholeModel;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random requests without a plan, and what is said of them, by the word of solvers from elsewhere on the model of the whole plan:
 * there is no plan; the rules of the set alone, all others dropped, leave none; without any one of them there is one; each cure
 * makes a plan possible, and one unit less of it (1 g, 1 kcal, a day, a dish, a cent) does not. SCIP is asked of all, GLPK of some.
 */
class ClashesBySolversTest {
    private static final long NO_PLAN = Long.getLong("batchwright.clashes", 50);
    private static final long TOO_DEAR = NO_PLAN * 3 / 10;
    private static final int GLPK_EVERY = 10;

    /** Left out for time only: one of its questions takes longer than twenty seconds. */
    private static final Set<Long> SLOW = Set.of(31L);

    private static final Duration TIME = Duration.ofMinutes(10);
    /** So much that every question is answered. */
    private static final WorkLimits ENOUGH = new WorkLimits(20_000_000_000L, 100_000_000_000L);

    private static final ClashFinder FINDER = new ClashFinder(new BatchPlanner(), System::nanoTime, TIME, ENOUGH);

    private static PlanRequest unlimited(long seed) {
        return RandomProblems.of(seed).withBudget(Optional.empty());
    }

    static LongStream seedsWithoutPlan() {
        return seeds().filter(seed -> !new Outside(seed).solves(unlimited(seed)))
                .limit(NO_PLAN);
    }

    static LongStream seedsWithPlan() {
        return seeds().filter(
                        seed -> new Outside(seed).leastCost(unlimited(seed)).orElse(0) > 1)
                .limit(TOO_DEAR);
    }

    private static LongStream seeds() {
        return LongStream.iterate(0, seed -> seed + 1).filter(seed -> !SLOW.contains(seed));
    }

    /** Solvers from elsewhere, for the request of one seed. */
    private record Outside(long seed) {
        boolean solves(PlanRequest request) {
            return leastCost(request).isPresent();
        }

        OptionalDouble leastCost(PlanRequest request) {
            String mps = WholeModel.of(request).mps();
            OptionalDouble cost = OutsideSolver.SCIP.solve(mps);
            if (seed % GLPK_EVERY == 0 && OutsideSolver.GLPK.isThere()) {
                assertThat(OutsideSolver.GLPK.solve(mps).isPresent())
                        .as("GLPK finds a plan")
                        .isEqualTo(cost.isPresent());
            }
            return cost;
        }
    }

    /** Two of three with a budget: some are enough for what a cure makes possible, some are not. */
    private static PlanRequest withoutPlan(long seed) {
        Optional<Money> budget = seed % 3 == 0 ? Optional.empty() : Optional.of(new Money(200 + 7919 * seed % 2000));
        return unlimited(seed).withBudget(budget);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsWithoutPlan")
    void where_there_is_no_plan_at_any_cost(long seed) {
        PlanRequest request = withoutPlan(seed);
        PlanRequest atAnyCost = unlimited(seed);
        var outside = new Outside(seed);

        Optional<PlainCauses.Cause> plain = new PlainCauses(request).first();
        if (plain.isPresent()) {
            assertThat(outside.solves(SoftRules.of(request).holding(atAnyCost, List.of())))
                    .as(
                            "all rules that can be loosened dropped: %s",
                            plain.get().softRule().says())
                    .isFalse();
            Cure cure = Cure.atAnyCost(
                    plain.get().softRule(), request, new Oracle(new BatchPlanner(), ENOUGH, System::nanoTime, TIME));
            leastThatSolves(cure, request, outside);
            return;
        }
        List<Cure> cures = FINDER.cures(request);
        irreducible(cures, atAnyCost, outside);
        cures.forEach(cure -> leastThatSolves(cure, request, outside));
    }

    /** The budget belongs to each of these sets: without it there is a plan that keeps everything else. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsWithPlan")
    void where_every_plan_is_too_dear(long seed) {
        var outside = new Outside(seed);
        long cost = Math.round(outside.leastCost(unlimited(seed)).orElseThrow());
        long budget = seed % 2 == 0 ? cost - 1 : cost * 4 / 5;
        PlanRequest request = unlimited(seed).withBudget(Optional.of(new Money(budget)));
        assertThat(outside.solves(request)).isFalse();
        assertThat(outside.solves(request.withBudget(Optional.of(new Money(cost - 1)))))
                .as("a cent less")
                .isFalse();

        Proof proof = ((PlanResult.NoPlan) new BatchPlanner().plan(request)).proof();
        assertThat(FINDER.clashes(request, proof).all().get(0))
                .isEqualTo(Clash.budget(new Money(budget), new Money(cost), Currency.USD));
        List<Cure> cures = FINDER.curesWithinBudget(request);
        irreducible(cures, request, outside);
        cures.forEach(cure -> leastThatSolves(cure, request, outside));
    }

    /**
     * The rules alone leave no plan, and all but one of them do. That is enough for every proper subset: a subset lies within the
     * set without some one rule, and rules only forbid, so whatever plan keeps all but that one keeps the subset too. Containers a
     * day, like part ranges and stock, hold throughout.
     */
    private static void irreducible(List<Cure> cures, PlanRequest request, Outside outside) {
        SoftRules softRules = SoftRules.of(request);
        List<String> says = cures.stream().map(c -> c.softRule().says()).toList();
        assertThat(says).doesNotHaveDuplicates();
        List<SoftRule> set =
                softRules.all().stream().filter(d -> says.contains(d.says())).toList();
        assertThat(outside.solves(softRules.holding(request, set)))
                .as("the set alone")
                .isFalse();
        for (SoftRule softRule : set) {
            List<SoftRule> others = new ArrayList<>(set);
            others.remove(softRule);
            assertThat(outside.solves(softRules.holding(request, others)))
                    .as("the set without %s", softRule.says())
                    .isTrue();
        }
    }

    private static void leastThatSolves(Cure cure, PlanRequest request, Outside outside) {
        assertThat(cure.certain()).isTrue();
        if (cure.found().isEmpty()) {
            cure.softRule().loosenings().stream()
                    .flatMap(List::stream)
                    .filter(loosening -> loosening.reach() > 0)
                    .forEach(loosening -> assertThat(
                                    outside.solves(loosening.loosen().by(request, loosening.reach())))
                            .as("%s to the end", cure.softRule().rule())
                            .isFalse());
            return;
        }
        Cure.Loosened setting = cure.found().get();
        assertThat(outside.solves(cure.applied(request)))
                .as("%s", cure.clash(true).cure())
                .isTrue();
        PlanRequest less = setting.loosening().loosen().by(request, setting.units() - 1);
        assertThat(outside.solves(cure.raised().isPresent() ? less.withBudget(Optional.empty()) : less))
                .as("one unit less than %s", cure.clash(true).cure())
                .isFalse();
        cure.raised().ifPresent(raised -> {
            Money to = raised.cost().most().orElseThrow();
            assertThat(outside.solves(cure.applied(request).withBudget(Optional.of(new Money(to.minor() - 1)))))
                    .as("a cent less than %s", cure.clash(true).cure())
                    .isFalse();
        });
    }
}
