package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.explain.Oracle.WorkLimits;
import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import batchwright.solve.BatchPlanner;
import java.time.Duration;
import java.util.List;

/** Asks the planner whether a set of clashing rules is what it claims to be. */
final class Checked {
    private static final Duration TIME = Duration.ofMinutes(10);
    /** So much that every question is answered. */
    private static final WorkLimits ENOUGH = new WorkLimits(20_000_000_000L, 100_000_000_000L);

    private Checked() {}

    /** The set cannot hold, every smaller one can; each cure works, and one unit less of it does not. */
    static List<Cure> cures(PlanRequest request) {
        List<Cure> cures = new ClashFinder(new BatchPlanner(), System::nanoTime, TIME, ENOUGH).cures(request);
        assertThat(cures).allMatch(Cure::certain);
        // Containers a day always hold in the filter: whether they belong to the set is seen from their cure alone.
        List<SoftRule> set = cures.stream()
                .map(Cure::softRule)
                .filter(d -> !d.rule().equals("containers a day"))
                .toList();
        SoftRules softRules = SoftRules.of(request);
        assertThat(possible(held(softRules, request, set))).isEqualTo(Possible.NO);
        for (SoftRule softRule : set) {
            List<SoftRule> others =
                    set.stream().filter(d -> !d.equals(softRule)).toList();
            assertThat(possible(held(softRules, request, others)))
                    .as("without %s", softRule.rule())
                    .isEqualTo(Possible.YES);
        }
        boolean cured = cures.stream().anyMatch(cure -> cure.found().isPresent());
        cures.stream()
                .filter(cure -> !(cured && cure.softRule().isLoosenedLast()))
                .forEach(cure -> check(cure, request));
        return cures;
    }

    private static void check(Cure cure, PlanRequest request) {
        if (cure.found().isPresent()) {
            Cure.Loosened setting = cure.found().get();
            assertThat(possible(setting.applied(request)))
                    .as("%s by %d", cure.softRule().rule(), setting.units())
                    .isEqualTo(Possible.YES);
            assertThat(possible(setting.loosening().loosen().by(request, setting.units() - 1)))
                    .as("%s by one unit less", cure.softRule().rule())
                    .isEqualTo(Possible.NO);
            return;
        }
        cure.softRule().loosenings().stream()
                .flatMap(List::stream)
                .filter(loosening -> loosening.reach() > 0)
                .forEach(loosening -> assertThat(possible(loosening.loosen().by(request, loosening.reach())))
                        .as("%s to the end", cure.softRule().rule())
                        .isEqualTo(Possible.NO));
    }

    /** Soft rules of another list, matched by what they say. */
    private static PlanRequest held(SoftRules softRules, PlanRequest request, List<SoftRule> set) {
        List<String> says = set.stream().map(SoftRule::says).toList();
        return softRules.holding(
                request,
                softRules.all().stream().filter(d -> says.contains(d.says())).toList());
    }

    static Possible possible(PlanRequest request) {
        return new BatchPlanner().possible(request);
    }
}
