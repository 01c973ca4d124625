package batchwright.needs.weighing.kalman;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What all readings, earlier and later ones, say of each time. Runs backwards and inverts no matrix:
 *
 * <pre>
 * r = Z v/F + L' T' r_next,   N = Z Z'/F + L' T' N_next T L,   L = I - K Z'
 * mean + P r,   P - P N P
 * </pre>
 *
 * <p>Source: Durbin J, Koopman SJ. Time Series Analysis by State Space Methods, 2nd ed. 2012, section 4.4 (from memory); checked
 * against a solve of the whole system.
 */
public final class Smoother {
    private RealVector pull;
    private RealMatrix certainty;

    private Smoother(int figures) {
        this.pull = new ArrayRealVector(figures);
        this.certainty = MatrixUtils.createRealMatrix(figures, figures);
    }

    /** One belief for each time, in order. */
    public static List<Belief> smooth(List<Moment> course) {
        List<Belief> smooth = new ArrayList<>();
        if (!course.isEmpty()) {
            var smoother = new Smoother(course.get(0).before().mean().getDimension());
            for (int i = course.size() - 1; i >= 0; i--) {
                smooth.add(smoother.at(course.get(i)));
            }
        }
        Collections.reverse(smooth);
        return List.copyOf(smooth);
    }

    private Belief at(Moment moment) {
        RealMatrix back = moment.next().transition();
        pull = back.transpose().operate(pull);
        certainty = back.transpose().multiply(certainty).multiply(back);
        Optional<Reading> reading = moment.reading();
        reading.ifPresent(seen -> add(seen, moment.before()));
        RealMatrix doubt = moment.before().covariance();
        return new Belief(
                moment.before().mean().add(doubt.operate(pull)),
                doubt.subtract(doubt.multiply(certainty).multiply(doubt)));
    }

    private void add(Reading seen, Belief before) {
        Surprise surprise = seen.surprise(before);
        RealVector loading = seen.loading();
        RealMatrix left = seen.left(before);
        pull = loading.mapMultiply(surprise.value() / surprise.variance())
                .add(left.transpose().operate(pull));
        certainty = loading.outerProduct(loading)
                .scalarMultiply(1 / surprise.variance())
                .add(left.transpose().multiply(certainty).multiply(left));
    }
}
