/**
 * What was found in the files, and what was written, printed.
 */
@NullMarked
package batchwright.report.files;

import org.jspecify.annotations.NullMarked;
