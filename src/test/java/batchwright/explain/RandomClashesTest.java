package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.audit.Audit;
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

    /** So much time that no answer depends on the machine. */
    private static final Duration ALL = Duration.ofMinutes(2);

    private static final Duration ONE_QUESTION = Duration.ofSeconds(20);

    static LongStream seedsWithoutPlan() {
        return LongStream.iterate(0, seed -> seed + 1)
                .filter(seed -> impossible(request(seed)))
                .limit(REQUESTS);
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

        List<Cure> cures = new ClashFinder(new BatchPlanner(), System::nanoTime, ALL, ONE_QUESTION).cures(request);

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
}
