package batchwright.needs.weighing.kalman;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.weighing.PublishedTable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 28 days of weight and intake: weight and expenditure as a state, worked out apart from this program ({@code worked_weights*.csv}),
 * the last state and the likelihood by a dense Gaussian solve.
 */
class WorkedWeightsTest {
    private static final double RHO = 7000;
    private static final int OUTLIER = 25;
    private static final PublishedTable DAYS = new PublishedTable("worked_weights.csv");
    private static final PublishedTable FILTERED = new PublishedTable("worked_weights_kalman.csv");

    private static List<Moment> course(int without) {
        return Courses.run(
                Courses.belief(new double[] {80, 2500}, 100, 250.0 * 250),
                DAYS.size(),
                t -> t == without ? Optional.empty() : Courses.reading(DAYS.number(t, "weight_kg"), 0.16, 1, 0),
                t -> Courses.motion(
                        new double[][] {{1, -1 / RHO}, {0, 1}},
                        new double[] {DAYS.number(t, "intake_kcal") / RHO, 0},
                        0.05 * 0.05,
                        10 * 10));
    }

    @Test
    void every_day_is_filtered_as_worked_out() {
        List<Moment> course = course(-1);

        for (int t = 0; t < course.size(); t++) {
            Belief after = course.get(t).after();
            assertThat(after.mean(0)).isCloseTo(FILTERED.number(t, "W_filt"), within(1e-7));
            assertThat(after.mean(1)).isCloseTo(FILTERED.number(t, "E_filt"), within(1e-5));
            assertThat(after.sd(0)).isCloseTo(FILTERED.number(t, "sd_W"), within(1e-7));
            assertThat(after.sd(1)).isCloseTo(FILTERED.number(t, "sd_E"), within(1e-5));
            assertThat(after.covariance().getEntry(0, 1)).isCloseTo(FILTERED.number(t, "cov_WE"), within(1e-6));
        }
        assertThat(Courses.logLikelihood(course)).isCloseTo(-23.71566370, within(1e-7));
    }

    @Test
    void the_first_day_is_smoothed_as_worked_out() {
        Belief first = Smoother.smooth(course(-1)).get(0);

        assertThat(first.mean(1)).isCloseTo(2480.798, within(1e-3));
        assertThat(first.sd(1)).isCloseTo(94.477, within(1e-3));
    }

    /** One bad weighing costs 91 kcal a day. */
    @Test
    void without_the_outlier() {
        List<Moment> course = course(OUTLIER);
        Belief last = course.get(course.size() - 1).after();

        assertThat(last.mean(1)).isCloseTo(2566.096, within(1e-3));
        assertThat(last.sd(1)).isCloseTo(98.389, within(1e-3));
        assertThat(Courses.logLikelihood(course)).isCloseTo(-10.11112701, within(1e-7));
    }

    @Test
    void the_outlier_lies_outside_the_gate() {
        assertThat(course(-1).get(OUTLIER).surprise().orElseThrow().standardDeviations())
                .isGreaterThan(3);
    }
}
