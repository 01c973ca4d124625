/**
 * Several cooking sessions one after another, made of plans of one session each. Sees a planner only from outside.
 */
@NullMarked
package batchwright.solve.session;

import org.jspecify.annotations.NullMarked;
