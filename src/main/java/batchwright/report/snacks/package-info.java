/**
 * Snacks that close a calorie gap, printed.
 */
@NullMarked
package batchwright.report.snacks;

import org.jspecify.annotations.NullMarked;
