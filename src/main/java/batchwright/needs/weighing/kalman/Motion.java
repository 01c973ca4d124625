package batchwright.needs.weighing.kalman;

import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** From one time to the next: x' = T x + c + w, w ~ N(0, Q). */
public record Motion(RealMatrix transition, RealVector drift, RealMatrix noise) {
    Belief of(Belief now) {
        return new Belief(
                transition.operate(now.mean()).add(drift),
                transition
                        .multiply(now.covariance())
                        .multiply(transition.transpose())
                        .add(noise));
    }
}
