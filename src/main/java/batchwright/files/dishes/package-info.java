/**
 * A dish: parts, portions, steps, mixes.
 */
@NullMarked
package batchwright.files.dishes;

import org.jspecify.annotations.NullMarked;
