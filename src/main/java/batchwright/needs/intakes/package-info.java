/**
 * Published daily amounts and limits of nutrients, and a day beside them. Reported only: no plan has to keep them, but for those
 * that are the target's own.
 */
@NullMarked
package batchwright.needs.intakes;

import org.jspecify.annotations.NullMarked;
