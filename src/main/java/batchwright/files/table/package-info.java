/**
 * CSV tables: lines, columns by name, rows.
 */
@NullMarked
package batchwright.files.table;

import org.jspecify.annotations.NullMarked;
