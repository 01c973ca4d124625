/** At the stove: step by step, the pot's weight, labels, and what was cooked and filled. */
@NullMarked
package batchwright.page.stove;

import org.jspecify.annotations.NullMarked;
