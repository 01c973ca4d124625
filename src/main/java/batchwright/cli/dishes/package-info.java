/** Asking for a dish of one's own. */
@NullMarked
package batchwright.cli.dishes;

import org.jspecify.annotations.NullMarked;
