/**
 * Cooking and the order of work, printed.
 */
@NullMarked
package batchwright.report.cooking;

import org.jspecify.annotations.NullMarked;
