package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
import batchwright.explain.Oracle.WorkLimits;
import batchwright.food.Nutrient;
import batchwright.limit.Range;
import batchwright.limit.Scope;
import batchwright.plan.PlanRequest;
import batchwright.plan.PlanResult;
import batchwright.solve.BatchPlanner;
import batchwright.solve.BruteForce;
import batchwright.solve.RandomProblems;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random requests without a plan: the set that is found is smallest, and so is each cure. That there is no plan is the word of
 * plain enumeration, which shares no code with the planner. That there is one is shown by a plan that the audit, which never sees
 * the planner, finds to keep every rule.
 */
class RandomClashesTest {
    /** -Dbatchwright.clashes=200 looks at more. */
    private static final long REQUESTS = Long.getLong("batchwright.clashes", 20);

    private static final Duration TIME = Duration.ofMinutes(10);
    /** So much that every question is answered. */
    private static final WorkLimits ENOUGH = new WorkLimits(20_000_000_000L, 100_000_000_000L);

    private static final int MORE_THAN_ANY_DISH = 900;

    static LongStream seedsWithoutPlan() {
        return LongStream.iterate(0, seed -> seed + 1)
                .filter(seed -> impossible(request(seed)))
                .limit(REQUESTS);
    }

    static LongStream someSeedsWithoutPlan() {
        return seedsWithoutPlan().limit(Math.max(1, REQUESTS / 3));
    }

    private static PlanRequest request(long seed) {
        return RandomProblems.of(seed).withBudget(Optional.empty());
    }

    private static boolean impossible(PlanRequest request) {
        return BruteForce.leastCost(request).isEmpty();
    }

    private static boolean possible(PlanRequest request) {
        PlanResult result = new BatchPlanner().plan(request);
        return result instanceof PlanResult.Planned planned
                && Audit.of(request, planned.plan()).passed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsWithoutPlan")
    void the_set_and_its_cures_are_smallest(long seed) {
        PlanRequest request = request(seed);

        List<Cure> cures = new ClashFinder(new BatchPlanner(), System::nanoTime, TIME, ENOUGH).cures(request);

        assertThat(cures).extracting(c -> c.softRule().says()).doesNotHaveDuplicates();
        assertThat(cures).allMatch(Cure::certain);
        irreducible(request, cures);
        cures.forEach(cure -> least(cure, request));
    }

    /** A set without one rule is the largest proper subset: when it can hold, so can what is in it. */
    private static void irreducible(PlanRequest request, List<Cure> cures) {
        SoftRules softRules = SoftRules.of(request);
        List<String> says = cures.stream().map(c -> c.softRule().says()).toList();
        List<SoftRule> set =
                softRules.all().stream().filter(d -> says.contains(d.says())).toList();
        assertThat(impossible(softRules.holding(request, set)))
                .as("all of the set")
                .isTrue();
        for (SoftRule softRule : set) {
            List<SoftRule> others = new ArrayList<>(set);
            others.remove(softRule);
            assertThat(possible(softRules.holding(request, others)))
                    .as("without %s", softRule.rule())
                    .isTrue();
        }
    }

    private static void least(Cure cure, PlanRequest request) {
        cure.found().ifPresent(setting -> {
            assertThat(possible(setting.applied(request)))
                    .as("%s by %d", cure.softRule().rule(), setting.units())
                    .isTrue();
            assertThat(impossible(setting.loosening().loosen().by(request, setting.units() - 1)))
                    .as("%s by one unit less", cure.softRule().rule())
                    .isTrue();
        });
    }

    /**
     * More fibre and fat than any dish could hold, beside what has no plan anyway. Of each set one rule has to change, so that no
     * set shares a rule with another, and what is said to cure them together does.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("someSeedsWithoutPlan")
    void sets_are_disjoint_and_smallest_and_cured_together(long seed) {
        PlanRequest request = withOneMoreCause(request(seed));
        var search = new ClashSearch(request, new Oracle(new BatchPlanner(), ENOUGH, System::nanoTime, TIME));

        List<List<SoftRule>> sets = search.sets();

        assertThat(sets.stream().flatMap(List::stream).map(SoftRule::says)).doesNotHaveDuplicates();
        sets.forEach(set -> irreducibleSet(request, set));
        for (List<Cure> together : sets.size() > 1 ? search.curesTogether(sets) : List.<List<Cure>>of()) {
            PlanRequest changed = request;
            for (Cure cure : together) {
                changed = cure.applied(changed);
            }
            assertThat(possible(changed)).as("all of %s", together).isTrue();
            for (Cure cure : together) {
                PlanRequest less = request;
                for (Cure other : together) {
                    less = other.equals(cure) ? oneUnitLess(cure, less) : other.applied(less);
                }
                assertThat(impossible(less)).as("less of %s", cure).isTrue();
            }
        }
    }

    private static PlanRequest oneUnitLess(Cure cure, PlanRequest request) {
        Cure.Loosened found = cure.found().orElseThrow();
        return found.loosening().loosen().by(request, found.units() - 1);
    }

    private static PlanRequest withOneMoreCause(PlanRequest request) {
        EaterInRequest first = EaterInRequest.all(request).get(0);
        return first.withTarget(
                request, target -> target.with(Scope.DAY, Nutrient.FIBRE, Range.atLeast(MORE_THAN_ANY_DISH)));
    }

    /** The rules are known by what they say: each list has its own. */
    private static void irreducibleSet(PlanRequest request, List<SoftRule> found) {
        SoftRules softRules = SoftRules.of(request);
        List<String> says = found.stream().map(SoftRule::says).toList();
        List<SoftRule> set = softRules.all().stream()
                .filter(rule -> says.contains(rule.says()))
                .toList();
        assertThat(set).hasSameSizeAs(found);
        assertThat(impossible(softRules.holding(request, set))).isTrue();
        for (SoftRule softRule : set) {
            List<SoftRule> others = new ArrayList<>(set);
            others.remove(softRule);
            assertThat(possible(softRules.holding(request, others)))
                    .as("without %s", softRule.rule())
                    .isTrue();
        }
    }
}
