/**
 * Foods, their nutrients, measures, packs and cooked yields, dishes and the pantry: the kitchen as the files describe it.
 */
@NullMarked
package batchwright.food;

import org.jspecify.annotations.NullMarked;
