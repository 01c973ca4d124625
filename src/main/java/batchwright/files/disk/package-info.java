/**
 * Files as they lie on the disk or among the program's resources: found, absent or not readable, and their text.
 */
@NullMarked
package batchwright.files.disk;

import org.jspecify.annotations.NullMarked;
