/**
 * Dishes and containers of one dish, printed.
 */
@NullMarked
package batchwright.report.dishes;

import org.jspecify.annotations.NullMarked;
