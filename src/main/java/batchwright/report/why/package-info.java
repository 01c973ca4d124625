/**
 * What a plan's rules cost, and frontiers, printed.
 */
@NullMarked
package batchwright.report.why;

import org.jspecify.annotations.NullMarked;
