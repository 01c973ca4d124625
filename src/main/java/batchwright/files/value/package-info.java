/**
 * What one value of a file may say: numbers with bounds, dates, weights, yes and no; and every problem that is met.
 */
@NullMarked
package batchwright.files.value;

import org.jspecify.annotations.NullMarked;
