/** Who eats here: one question a page to a new profile, and the eaters there are. */
@NullMarked
package batchwright.page.start;

import org.jspecify.annotations.NullMarked;
