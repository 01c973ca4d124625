/**
 * Foods, packs and what is taken over from a table, printed.
 */
@NullMarked
package batchwright.report.foods;

import org.jspecify.annotations.NullMarked;
