/**
 * Cautions beside a plan or a dish, printed.
 */
@NullMarked
package batchwright.report.notice;

import org.jspecify.annotations.NullMarked;
