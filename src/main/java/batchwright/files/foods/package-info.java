/**
 * The catalogue, labels, measures and yields.
 */
@NullMarked
package batchwright.files.foods;

import org.jspecify.annotations.NullMarked;
