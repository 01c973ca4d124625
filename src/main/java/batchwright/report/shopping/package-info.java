/**
 * What to buy, what it costs, and what is at home, printed.
 */
@NullMarked
package batchwright.report.shopping;

import org.jspecify.annotations.NullMarked;
