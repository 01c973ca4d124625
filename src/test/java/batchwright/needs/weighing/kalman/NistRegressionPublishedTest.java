package batchwright.needs.weighing.kalman;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import batchwright.needs.weighing.PublishedTable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.StatUtils;
import org.junit.jupiter.api.Test;

/**
 * A state that does not move is a regression, worked out line by line; so the filter has to reach the values that NIST certifies
 * (Statistical Reference Datasets, linear regression). Its covariance times the residual variance is that of the coefficients.
 */
class NistRegressionPublishedTest {
    private static final PublishedTable CERTIFIED = new PublishedTable("nist_certified.csv");
    /** Variance of what is known before: next to nothing, yet not so wide that the first line cancels all digits. */
    private static final double WIDE = 1e6;

    private static final double WIDE_FOR_SCALED = 1e9;

    @Test
    void norris() {
        var data = new PublishedTable("nist_norris.csv");
        double[] y = data.column("y");
        double[] x = data.column("x");
        Belief found = fit(WIDE, y, x);
        double sd = residualSd(found, y, x);

        assertThat(found.mean(0)).isCloseTo(certified("Norris", "B0", "estimate"), within(1e-6));
        assertThat(found.mean(1)).isCloseTo(certified("Norris", "B1", "estimate"), within(1e-8));
        assertThat(sd).isCloseTo(certified("Norris", "residual_sd", "estimate"), within(1e-8));
        assertThat(found.sd(0) * sd).isCloseTo(certified("Norris", "B0", "std_dev"), within(1e-6));
        assertThat(found.sd(1) * sd).isCloseTo(certified("Norris", "B1", "std_dev"), within(1e-9));
    }

    /** Its columns are nearly dependent: centred and scaled, as is usual, the slopes come to six digits. */
    @Test
    void longley() {
        var data = new PublishedTable("nist_longley.csv");
        double[] y = data.column("y");
        double[][] x = new double[6][];
        double[] scale = new double[6];
        for (int j = 0; j < x.length; j++) {
            double[] column = data.column("x" + (j + 1));
            double mean = StatUtils.mean(column);
            scale[j] = Math.sqrt(StatUtils.variance(column));
            double size = scale[j];
            x[j] = Arrays.stream(column).map(value -> (value - mean) / size).toArray();
        }
        double middle = StatUtils.mean(y);
        Belief found = fit(
                WIDE_FOR_SCALED, Arrays.stream(y).map(value -> value - middle).toArray(), x);

        for (int j = 0; j < x.length; j++) {
            double expected = certified("Longley", "B" + (j + 1), "estimate");
            assertThat(found.mean(j + 1) / scale[j]).isCloseTo(expected, within(1e-5 * Math.abs(expected)));
        }
    }

    /** Coefficients: the constant first. */
    private static Belief fit(double variance, double[] y, double[]... x) {
        int figures = x.length + 1;
        double[][] still = new double[figures][figures];
        double[] wide = new double[figures];
        for (int i = 0; i < figures; i++) {
            still[i][i] = 1;
            wide[i] = variance;
        }
        Motion motion = Courses.motion(still, new double[figures], new double[figures]);
        List<Moment> course =
                Courses.run(Courses.belief(new double[figures], wide), y.length, t -> seen(t, y, x), t -> motion);
        return course.get(course.size() - 1).after();
    }

    private static Optional<Reading> seen(int t, double[] y, double[]... x) {
        double[] loading = new double[x.length + 1];
        loading[0] = 1;
        for (int j = 0; j < x.length; j++) {
            loading[j + 1] = x[j][t];
        }
        return Courses.reading(y[t], 1, loading);
    }

    private static double residualSd(Belief found, double[] y, double[] x) {
        double sum = 0;
        for (int t = 0; t < y.length; t++) {
            double residual = y[t] - found.mean(0) - found.mean(1) * x[t];
            sum += residual * residual;
        }
        return Math.sqrt(sum / (y.length - 2));
    }

    private static double certified(String dataset, String term, String column) {
        for (int row = 0; row < CERTIFIED.size(); row++) {
            if (CERTIFIED.text(row, "dataset").equals(dataset)
                    && CERTIFIED.text(row, "term").equals(term)) {
                return CERTIFIED.number(row, column);
            }
        }
        throw new AssertionError(dataset + " " + term);
    }
}
