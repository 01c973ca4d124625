/**
 * What stands on a container's label, how large, and how a sheet of labels is laid out.
 */
@NullMarked
package batchwright.report.labels;

import org.jspecify.annotations.NullMarked;
