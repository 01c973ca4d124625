package batchwright.needs.weighing.kalman;

import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is seen: y = Z x + e, e ~ N(0, H).
 *
 * @param loading Z
 * @param variance H, more than 0 unless the state itself is in doubt
 */
public record Reading(RealVector loading, double value, double variance) {
    /** What a belief had not foreseen. */
    public Surprise surprise(Belief belief) {
        double doubt = loading.dotProduct(belief.covariance().operate(loading)) + variance;
        return new Surprise(value - loading.dotProduct(belief.mean()), doubt);
    }

    Belief update(Belief belief) {
        Surprise surprise = surprise(belief);
        RealVector covariance = belief.covariance().operate(loading);
        RealVector gain = covariance.mapDivide(surprise.variance());
        return new Belief(
                belief.mean().add(gain.mapMultiply(surprise.value())),
                belief.covariance().subtract(gain.outerProduct(covariance)));
    }

    /** I - K Z': how much of a doubt is left. */
    RealMatrix left(Belief belief) {
        RealVector gain =
                belief.covariance().operate(loading).mapDivide(surprise(belief).variance());
        return MatrixUtils.createRealIdentityMatrix(loading.getDimension()).subtract(gain.outerProduct(loading));
    }
}
