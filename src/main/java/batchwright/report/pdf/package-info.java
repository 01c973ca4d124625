/**
 * Labels on paper as a PDF, in letters that travel with it: no browser or printer driver decides where they lie. The same answer gives
 * the same bytes.
 */
@NullMarked
package batchwright.report.pdf;

import org.jspecify.annotations.NullMarked;
