package batchwright.needs.weighing.kalman;

import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** What is known of a state: a normal distribution. */
public record Belief(RealVector mean, RealMatrix covariance) {
    public double mean(int figure) {
        return mean.getEntry(figure);
    }

    /** Standard deviation of one figure. */
    public double sd(int figure) {
        return Math.sqrt(Math.max(0, covariance.getEntry(figure, figure)));
    }

    /** With this much more doubt. */
    public Belief plus(RealVector shift, RealMatrix doubt) {
        return new Belief(mean.add(shift), covariance.add(doubt));
    }
}
