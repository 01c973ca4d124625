/**
 * What is asked of a planner and what it answers: request, plan, result, clashes. No solver type appears here.
 */
@NullMarked
package batchwright.plan;

import org.jspecify.annotations.NullMarked;
