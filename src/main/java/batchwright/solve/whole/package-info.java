/**
 * The whole plan as one model, day by day: for solvers from elsewhere, which know nothing of this program. The search of the
 * program itself never uses it.
 */
@NullMarked
package batchwright.solve.whole;

import org.jspecify.annotations.NullMarked;
