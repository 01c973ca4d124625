package batchwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import batchwright.plan.Plan;
import batchwright.plan.PlanRequest;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** More dishes in the files make no plan much dearer that is found with the same work, and let none be missed. */
class MoreToChooseFromTest {
    private static final long WORK = 7_500_000_000L;

    /** Cents a dearer plan may cost for each that one from the starter dishes alone costs, found with the same work. */
    private static final double DEARER = 1.05;

    private static double cents(int dishes, String eater) {
        PlanRequest request = WideKitchens.request(dishes, 5, List.of(eater));
        return BatchPlanner.untilWork(WORK)
                .plan(request)
                .best()
                .map(Plan::cost)
                .map(cost -> (double) cost.minor())
                .orElse(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lifter-gaining", "desk-cutting"})
    void more_dishes_never_make_it_much_dearer(String eater) {
        double few = cents(24, eater);

        assertThat(few).isFinite();
        for (int dishes : List.of(48, 100, 200)) {
            assertThat(cents(dishes, eater)).as(dishes + " dishes").isLessThan(DEARER * few);
        }
    }
}
