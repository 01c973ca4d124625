package batchwright.needs.weighing.kalman;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.weighing.PublishedTable;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;

/**
 * The local level model on the flow of the Nile: Durbin and Koopman, Time Series Analysis by State Space Methods, at their H 15099, Q
 * 1469.1. Software counts its likelihood in four ways; each figure below is printed by one of them.
 */
class NilePublishedTest {
    private static final double H = 15099;
    private static final double Q = 1469.1;
    private static final double LOG_2_PI = Math.log(2 * Math.PI);
    private static final double[] FLOW = new PublishedTable("nile.csv").column("flow_1e8_m3");
    private static final PublishedTable FILTERED = new PublishedTable("nile_filter.csv");

    /** From a belief about the year with this index on. */
    private static List<Moment> from(int start, double mean, double variance, IntPredicate seen) {
        Motion motion = Courses.motion(new double[][] {{1}}, new double[] {0}, Q);
        return Courses.run(
                Courses.belief(new double[] {mean}, variance),
                FLOW.length - start,
                t -> seen.test(t + start) ? Courses.reading(FLOW[t + start], H, 1) : Optional.empty(),
                t -> motion);
    }

    /** Nothing is known before the first year; so the second starts from it. */
    private static List<Moment> diffuse() {
        return from(1, FLOW[0], H + Q, t -> true);
    }

    @Test
    void the_data_are_the_published_ones() {
        assertThat(FLOW).hasSize(100);
        assertThat(java.util.Arrays.stream(FLOW).sum()).isEqualTo(91935);
    }

    /** The two software figures at the maximum hold to 0.001 at the rounded H and Q. */
    @Test
    void the_likelihood_is_the_published_one_in_all_four_conventions() {
        double exact = Courses.logLikelihood(diffuse());
        double withFirst = Courses.logLikelihood(from(0, 0, 1e7, t -> true));
        List<Moment> wide = from(0, 0, 1e6, t -> true);
        double withoutFirst = Courses.logLikelihood(wide.subList(1, wide.size()));

        assertThat(exact).isCloseTo(-632.5456, within(1e-3));
        assertThat(exact - LOG_2_PI / 2).isCloseTo(-633.4646, within(1e-3));
        assertThat(withFirst).isCloseTo(-641.5856, within(1e-4));
        assertThat(withoutFirst).isCloseTo(-632.53770, within(1e-4));
    }

    @Test
    void every_year_is_filtered_and_smoothed_as_worked_out_apart() {
        List<Moment> course = diffuse();
        List<Belief> smooth = Smoother.smooth(course);

        for (int i = 0; i < course.size(); i++) {
            int row = i + 1;
            Moment moment = course.get(i);
            Surprise surprise = moment.surprise().orElseThrow();
            assertThat(moment.before().mean(0)).isCloseTo(FILTERED.number(row, "a_pred"), within(1e-5));
            assertThat(surprise.value()).isCloseTo(FILTERED.number(row, "v"), within(1e-5));
            assertThat(surprise.variance()).isCloseTo(FILTERED.number(row, "F"), within(1e-5));
            assertThat(moment.after().mean(0)).isCloseTo(FILTERED.number(row, "a_filt"), within(1e-5));
            assertThat(variance(moment.after())).isCloseTo(FILTERED.number(row, "P_filt"), within(1e-5));
            assertThat(smooth.get(i).mean(0)).isCloseTo(FILTERED.number(row, "a_smooth"), within(1e-5));
            assertThat(variance(smooth.get(i))).isCloseTo(FILTERED.number(row, "V_smooth"), within(1e-5));
        }
    }

    /** Years 21-40 and 61-80 unseen, as in the book; figures worked out apart. */
    @Test
    void unseen_years_are_missing_not_zero() {
        List<Moment> course = from(1, FLOW[0], H + Q, t -> !(t >= 20 && t < 40) && !(t >= 60 && t < 80));
        Belief year30 = Smoother.smooth(course).get(28);

        assertThat(course.get(38).after().mean(0)).isCloseTo(1026.1416, within(1e-4));
        assertThat(variance(course.get(38).after())).isCloseTo(33414.196, within(1e-3));
        assertThat(year30.mean(0)).isCloseTo(903.4211, within(1e-4));
        assertThat(variance(year30)).isCloseTo(9715.0060, within(1e-4));
        assertThat(Courses.logLikelihood(course)).isCloseTo(-380.58706, within(1e-5));
    }

    private static double variance(Belief belief) {
        return belief.covariance().getEntry(0, 0);
    }
}
