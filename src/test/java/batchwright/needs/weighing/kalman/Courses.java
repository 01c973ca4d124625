package batchwright.needs.weighing.kalman;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;

/** Runs the filter over readings in tests. */
final class Courses {
    private Courses() {}

    static List<Moment> run(Belief first, int times, IntFunction<Optional<Reading>> seen, IntFunction<Motion> motion) {
        List<Moment> course = new ArrayList<>();
        Belief now = first;
        for (int t = 0; t < times; t++) {
            var moment = Moment.of(now, seen.apply(t), motion.apply(t));
            course.add(moment);
            now = moment.foreseen();
        }
        return course;
    }

    static double logLikelihood(List<Moment> course) {
        return course.stream()
                .flatMap(moment -> moment.surprise().stream())
                .mapToDouble(Surprise::logDensity)
                .sum();
    }

    static Belief belief(double[] mean, double... variances) {
        return new Belief(new ArrayRealVector(mean), MatrixUtils.createRealDiagonalMatrix(variances));
    }

    static Motion motion(double[][] transition, double[] drift, double... variances) {
        return new Motion(
                MatrixUtils.createRealMatrix(transition),
                new ArrayRealVector(drift),
                MatrixUtils.createRealDiagonalMatrix(variances));
    }

    static Optional<Reading> reading(double value, double variance, double... loading) {
        return Optional.of(new Reading(new ArrayRealVector(loading), value, variance));
    }
}
