/**
 * The search for the cheapest plan. The model of one plan, its rules and the proof; nothing outside this package sees a solver.
 */
@NullMarked
package batchwright.solve;

import org.jspecify.annotations.NullMarked;
