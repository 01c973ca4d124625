/** Resting energy: one class for each published equation. */
@NullMarked
package batchwright.needs.resting;

import org.jspecify.annotations.NullMarked;
