/** A linear Gaussian state that is seen through noise: filter, likelihood, smoother. Knows no weight and no food. */
@NullMarked
package batchwright.needs.weighing.kalman;

import org.jspecify.annotations.NullMarked;
