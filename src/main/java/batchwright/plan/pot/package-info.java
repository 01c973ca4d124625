/** How a pot, as it came out, is shared among containers. */
@NullMarked
package batchwright.plan.pot;

import org.jspecify.annotations.NullMarked;
