/**
 * Recomputes every claim of a plan from the files by plain decimal arithmetic. Never sees the solver.
 */
@NullMarked
package batchwright.audit;

import org.jspecify.annotations.NullMarked;
