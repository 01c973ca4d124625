/**
 * What an eater needs, printed.
 */
@NullMarked
package batchwright.report.needs;

import org.jspecify.annotations.NullMarked;
