/**
 * What a food is made of as far as diets ask: which animals, alcohol, gluten; and diets as sets of origins that they leave out. What
 * may be or is not known is a question, never a silent yes.
 */
@NullMarked
package batchwright.food.origin;

import org.jspecify.annotations.NullMarked;
