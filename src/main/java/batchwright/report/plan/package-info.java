/**
 * A whole plan, printed.
 */
@NullMarked
package batchwright.report.plan;

import org.jspecify.annotations.NullMarked;
