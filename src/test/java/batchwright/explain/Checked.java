package batchwright.explain;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.PlanRequest;
import batchwright.plan.Planner.Possible;
import batchwright.solve.BatchPlanner;
import java.time.Duration;
import java.util.List;

/** Asks the planner whether a set of clashing rules is what it claims to be. */
final class Checked {
    /** So much time that no answer depends on the machine. */
    private static final Duration ALL = Duration.ofMinutes(2);

    private static final Duration ONE_QUESTION = Duration.ofSeconds(20);

    private Checked() {}

    /** The set cannot hold, every smaller one can; each cure works, and one unit less of it does not. */
    static List<Cure> cures(PlanRequest request) {
        List<Cure> cures = new ClashFinder(new BatchPlanner(), System::nanoTime, ALL, ONE_QUESTION).cures(request);
        assertThat(cures).allMatch(Cure::certain);
        // Containers a day always hold in the filter: whether they belong to the set is seen from their cure alone.
        List<Dial> set = cures.stream()
                .map(Cure::dial)
                .filter(d -> !d.rule().equals("containers a day"))
                .toList();
        Dials dials = Dials.of(request);
        assertThat(possible(held(dials, request, set))).isEqualTo(Possible.NO);
        for (Dial dial : set) {
            List<Dial> others = set.stream().filter(d -> !d.equals(dial)).toList();
            assertThat(possible(held(dials, request, others)))
                    .as("without %s", dial.rule())
                    .isEqualTo(Possible.YES);
        }
        cures.forEach(cure -> check(cure, request));
        return cures;
    }

    private static void check(Cure cure, PlanRequest request) {
        if (cure.found().isPresent()) {
            Cure.Setting setting = cure.found().get();
            assertThat(possible(setting.applied(request)))
                    .as("%s by %d", cure.dial().rule(), setting.units())
                    .isEqualTo(Possible.YES);
            assertThat(possible(setting.knob().loosen().by(request, setting.units() - 1)))
                    .as("%s by one unit less", cure.dial().rule())
                    .isEqualTo(Possible.NO);
            return;
        }
        cure.dial().knobs().stream()
                .flatMap(List::stream)
                .filter(knob -> knob.reach() > 0)
                .forEach(knob -> assertThat(possible(knob.loosen().by(request, knob.reach())))
                        .as("%s to the end", cure.dial().rule())
                        .isEqualTo(Possible.NO));
    }

    /** Dials of another list, matched by what they say. */
    private static PlanRequest held(Dials dials, PlanRequest request, List<Dial> set) {
        List<String> says = set.stream().map(Dial::says).toList();
        return dials.holding(
                request,
                dials.all().stream().filter(d -> says.contains(d.says())).toList());
    }

    static Possible possible(PlanRequest request) {
        return new BatchPlanner().possible(request);
    }
}
