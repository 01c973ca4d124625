/**
 * Pages of text, tables, charts and JSON that know no subject.
 */
@NullMarked
package batchwright.report.print;

import org.jspecify.annotations.NullMarked;
