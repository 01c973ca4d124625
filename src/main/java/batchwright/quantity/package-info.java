/**
 * Amounts with their unit in the name: money in whole minor units, energy, mass and length. Knows nothing else.
 */
@NullMarked
package batchwright.quantity;

import org.jspecify.annotations.NullMarked;
