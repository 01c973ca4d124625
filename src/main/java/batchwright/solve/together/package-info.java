/**
 * One kitchen for many eaters: which dishes to cook for all, what each eats of them, and one shopping for all. By decomposition, with a
 * bound: each eater is planned for alone, by packs that are sold by their worth.
 */
@NullMarked
package batchwright.solve.together;

import org.jspecify.annotations.NullMarked;
